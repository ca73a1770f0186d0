package dev.lapwing.jobs.domain.roof;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.roof.RoofDrawing.Found;
import dev.lapwing.jobs.domain.roof.RoofDrawing.Mark;
import dev.lapwing.jobs.domain.roof.RoofDrawing.Shape;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A plan is drawn to scale, and what was found is marked where its place is, each mark to be seen. */
class RoofDrawingTest {
    private static final DefaultPlans PLANS = new DefaultPlans(SharedFiles.read("jobs/roof-plans.csv"));
    private static final PlacedObject VENT =
            new PlacedObject("vent", ObjectType.VENT, "front vent", 0.25, 0.5, 0.4, 0.3);

    @Test
    void aRoofIsDrawnInCentimetresWithItsFrontAtTheTop() {
        RoofDrawing drawing = RoofDrawing.of(RoofPlan.fitting(6, 2, List.of(VENT)), List.of());

        assertThat(drawing.across()).isEqualTo(200);
        assertThat(drawing.along()).isEqualTo(600);
        // centre at a quarter of 600 cm and half of 200 cm; 40 cm along, 30 cm across
        assertThat(drawing.shapes()).containsExactly(new Shape("vent", "vent", "front vent", false, 85, 130, 30, 40));
        assertThat(drawing.viewBox()).isEqualTo("-14.0 -22.0 228.0 644.0");
    }

    @Test
    void aSmallThingLiesOverALargeOne() {
        var rack = new PlacedObject("rack", ObjectType.RACK, "rack", 0.5, 0.5, 3, 1.5);

        assertThat(RoofDrawing.of(RoofPlan.fitting(6, 2, List.of(VENT, rack)), List.of())
                        .shapes())
                .extracting(Shape::id)
                .containsExactly("rack", "vent");
    }

    @Test
    void findingsAreNumberedInTheirOrder() {
        RoofDrawing drawing = RoofDrawing.of(
                RoofPlan.fitting(6, 2, List.of()),
                List.of(
                        new Found(new Point(0, 0), "2026-01-02", "crack"),
                        new Found(new Point(1, 1), "2026-02-03", "void")));

        assertThat(drawing.marks())
                .containsExactly(new Mark(1, 0, 0, "2026-01-02", "crack"), new Mark(2, 200, 600, "2026-02-03", "void"));
    }

    @Property(tries = 200)
    void findingsOfOnePlaceAreMarkedSideBySideAndOnTheRoof(
            @ForAll @IntRange(min = 2, max = 12) int count,
            @ForAll @DoubleRange(max = 1) double x,
            @ForAll @DoubleRange(max = 1) double y) {
        List<Found> found = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            found.add(new Found(new Point(x, y), "2026-01-02", "crack"));
        }

        List<Mark> marks =
                RoofDrawing.of(RoofPlan.fitting(7, 2.3, List.of()), found).marks();

        assertThat(marks).allMatch(mark -> mark.x() >= 0 && mark.x() <= 230 && mark.y() >= 0 && mark.y() <= 700);
        for (Mark one : marks) {
            assertThat(marks.stream()
                            .filter(other -> other.number() > one.number())
                            .mapToDouble(other -> Math.hypot(other.x() - one.x(), other.y() - one.y())))
                    .allMatch(away -> away > 15);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "front-left, 0.1667, 0.1667",
        "rear-centre, 0.8333, 0.5",
        "'front-left, front vent', 0.2167, 0.425",
        "'front-left, no such thing', 0.1667, 0.1667",
        "somewhere else, 0.5, 0.5",
    })
    void aNamedPlaceHasAPoint(String zone, double x, double y) {
        // the vent reaches from 130 to 170 cm of 600 and from 85 to 115 cm of 200: its part nearest to the middle of
        // the field
        Point point = RoofPlan.fitting(6, 2, List.of(VENT)).placeOf(zone);

        assertThat(point.x()).isCloseTo(x, within(0.0001));
        assertThat(point.y()).isCloseTo(y, within(0.0001));
    }

    @Property(tries = 300)
    void thePointOfANamedPlaceLiesInTheFieldOrAtTheThing(
            @ForAll @DoubleRange(max = 1) double x, @ForAll @DoubleRange(max = 1) double y) {
        RoofPlan plan = PLANS.forUnit("motorhome", 7.4);
        Zone zone = plan.zoneAt(new Point(x, y));

        Zone found = plan.zoneAt(plan.placeOf(zone.name()));

        assertThat(found.field().equals(zone.field())
                        || zone.nearest().isPresent()
                                && zone.nearest().get().distance(plan.placeOf(zone.name()), 7.4, 2.3) < 0.001)
                .as(zone.name() + " became " + found.name())
                .isTrue();
    }

    @Test
    void whatIsTooLongForAShorterRoofIsCutAndItsEdgesFollow() {
        var rail = new PlacedObject("rail", ObjectType.AWNING, "rail", 0.5, 0.9, 6, 0.06);

        RoofPlan plan = RoofPlan.fitting(4, 2, List.of(rail));

        assertThat(plan.placed()).extracting(PlacedObject::lengthMetres).containsExactly(4.0);
        assertThat(plan.objects())
                .filteredOn(object -> object.id().equals("left-edge"))
                .extracting(PlacedObject::lengthMetres)
                .containsExactly(4.0);
    }
}
