package dev.lapwing.jobs.domain.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RoofPlanTest {
    private static final String FILE = SharedFiles.read("jobs/roof-plans.csv");
    private static final DefaultPlans PLANS = new DefaultPlans(FILE);
    private static final PlacedObject VENT =
            new PlacedObject("vent", ObjectType.VENT, "front vent", 0.5, 0.5, 0.4, 0.4);

    @ParameterizedTest
    @CsvSource({
        "0, 0, front-left", "0, 0.5, front-centre", "0, 1, front-right",
        "0.5, 0, middle-left", "0.5, 0.5, middle-centre", "0.5, 1, middle-right",
        "1, 0, rear-left", "1, 0.5, rear-centre", "1, 1, rear-right",
        "0.3333, 0.3333, front-left", "0.3334, 0.3334, middle-centre", "0.6667, 0.6667, rear-right",
    })
    void aTapFallsIntoOneOfNineFields(double x, double y, String field) {
        assertThat(bare().zoneAt(new Point(x, y)).field()).isEqualTo(field);
    }

    @Test
    void theNearestObjectNamesThePlace() {
        var plan = new RoofPlan(6, 2, List.of(VENT));

        assertThat(plan.zoneAt(new Point(0.5, 0.5)).name()).isEqualTo("middle-centre, front vent");
    }

    @Test
    void nearnessIsMeasuredInMetresFromTheObjectsSide() {
        // the vent's side is at 3.2 m of 6; 0.3 m farther is 3.5 m, the share 0.58333
        var plan = new RoofPlan(6, 2, List.of(VENT));

        assertThat(plan.zoneAt(new Point(3.49 / 6, 0.5)).nearest()).contains(VENT);
        assertThat(plan.zoneAt(new Point(3.51 / 6, 0.5)).nearest()).isEmpty();
    }

    @Test
    void ofTwoObjectsUnderTheTapTheSmallerNamesThePlace() {
        var rack = new PlacedObject("rack", ObjectType.RACK, "rack", 0.5, 0.5, 3, 1.5);

        assertThat(new RoofPlan(6, 2, List.of(rack, VENT))
                        .zoneAt(new Point(0.5, 0.5))
                        .nearest())
                .contains(VENT);
    }

    @Test
    void sealantRunsAroundOpeningsAndAlongSeamsAndEdges() {
        var panel = new PlacedObject("panel", ObjectType.PANEL, "panel", 0.8, 0.5, 1, 0.6);
        var seam = new PlacedObject("seam", ObjectType.SEAM, "seam", 0.1, 0.5, 0.05, 1.8);

        // vent 2 × (0.4 + 0.4) = 1.6 m, seam 1.8 m, the panel stands on feet
        assertThat(new RoofPlan(6, 2, List.of(VENT, panel, seam))
                        .sealantRun()
                        .metres()
                        .doubleValue())
                .isCloseTo(3.4, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"1.2, 0.5, x", "0.5, -0.1, y", "0.5, NaN, y"})
    void aTapBesideTheRoofIsRefused(double x, double y, String field) {
        assertThat(Point.check(x, y)).extracting(FieldError::field).containsExactly(field);
        assertThatThrownBy(() -> new Point(x, y)).hasMessageContaining("not on the roof");
    }

    @Test
    void missingCoordinatesAreNamed() {
        assertThat(Point.check(null, null)).extracting(FieldError::field).containsExactly("x", "y");
    }

    @Test
    void everyWrongEntryOfAPlanIsNamed() {
        var wrong = List.of(
                VENT,
                new PlacedObject("vent", null, " ", 0.99, 0.5, 1, 0.4),
                new PlacedObject("big", ObjectType.PANEL, "panel", 2, 0.5, 1, 9));

        assertThat(PlanCheck.of(6, 2, wrong))
                .extracting(FieldError::field)
                .containsExactly(
                        "objects[1].id",
                        "objects[1].type",
                        "objects[1].name",
                        "objects[1].x",
                        "objects[2].x",
                        "objects[2].widthMetres");
        assertThatThrownBy(() -> new RoofPlan(6, 2, wrong)).hasMessageContaining("objects[1].id");
    }

    @ParameterizedTest
    @CsvSource({
        "0, 2, lengthMetres",
        "NaN, 2, lengthMetres",
        "31, 2, lengthMetres",
        "6, 0, widthMetres",
        "6, 6, widthMetres"
    })
    void aRoofOfImpossibleSizeIsRefused(double length, double width, String field) {
        assertThat(PlanCheck.of(length, width, List.of()))
                .extracting(FieldError::field)
                .containsExactly(field);
    }

    @Property
    void everyKindOfUnitOfEveryLengthHasAPlan(
            @ForAll @IntRange(max = 3) int kind,
            @ForAll @DoubleRange(min = 2, max = 20) double length,
            @ForAll @DoubleRange(max = 1) double x,
            @ForAll @DoubleRange(max = 1) double y) {
        String unitKind = List.of("motorhome", "van", "trailer", "caravel").get(kind);

        var plan = PLANS.forUnit(unitKind, length);

        assertThat(plan.lengthMetres()).isEqualTo(length);
        assertThat(plan.objects()).extracting(PlacedObject::type).contains(ObjectType.VENT, ObjectType.EDGE);
        assertThat(plan.zoneAt(new Point(x, y)).name()).isNotBlank().hasSizeLessThan(120);
    }

    @Test
    void aDefaultObjectThatLeavesItsRoofIsRefused() {
        String wrong = FILE.replace("front vent,0.22", "front vent,0.01");

        assertThatThrownBy(() -> new DefaultPlans(wrong))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("roof-plans.csv, line 2")
                .hasMessageContaining("beyond the roof");
    }

    private static RoofPlan bare() {
        return new RoofPlan(6, 2, List.of());
    }
}
