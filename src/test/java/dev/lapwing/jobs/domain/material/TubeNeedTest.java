package dev.lapwing.jobs.domain.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.jobs.domain.measure.Volume;
import java.math.BigDecimal;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TubeNeedTest {
    private static final Volume TUBE = Volume.ofMillilitres(300);

    /**
     * Worked by hand: length cm × width mm × height mm ÷ 100 = mL, with waste, divided by the tube, rounded up.
     * Row 1: 420 × 25 × 6 = 63,000 mm³ = 63 mL; × 1.15 = 72.45; ÷ 300 = 0.24. Row 2: 10,000 × 25 × 6 = 1,500 mL; × 1.15 =
     * 1,725; ÷ 300 = 5.75. Row 3: exactly two tubes. Row 4: a hair more than two. Row 5: 3,048 × 25.4 × 6.35 = 491,611.92
     * mm³; × 1.10 = 540.773112 mL; ÷ 305 = 1.77.
     */
    @ParameterizedTest
    @CsvSource({
        "42, 25, 6, 15, 300, 63, 72.45, 1",
        "1000, 25, 6, 15, 300, 1500, 1725, 6",
        "400, 25, 6, 0, 300, 600, 600, 2",
        "400.1, 25, 6, 0, 300, 600.15, 600.15, 3",
        "304.8, 25.4, 6.35, 10, 305, 491.61192, 540.773112, 2",
    })
    void agreesWithHandWorkedExamples(
            double cm, double width, double height, int waste, double tube, String net, String gross, int tubes) {
        var settings = new BeadSettings(
                Length.ofMillimetres(width), Length.ofMillimetres(height), waste, Length.ofCentimetres(30));

        var need = TubeNeed.of(run(cm), settings, Volume.ofMillilitres(tube));

        assertThat(need.net().millilitres()).isEqualByComparingTo(net);
        assertThat(need.withWaste().millilitres()).isEqualByComparingTo(gross);
        assertThat(need.tubes()).isEqualTo(tubes);
    }

    @Property
    void whatIsTakenAlongIsEnoughAndNeverAWholeTubeTooMuch(
            @ForAll @DoubleRange(min = 0.1, max = 3_000) double cm,
            @ForAll @DoubleRange(min = 1, max = 60) double width,
            @ForAll @IntRange(max = 100) int waste) {
        var settings =
                new BeadSettings(Length.ofMillimetres(width), Length.ofMillimetres(6), waste, Length.ofCentimetres(30));

        var need = TubeNeed.of(run(cm), settings, TUBE);

        BigDecimal taken = TUBE.millilitres().multiply(BigDecimal.valueOf(need.tubes()));
        BigDecimal left = taken.subtract(need.withWaste().millilitres());
        assertThat(left).isBetween(BigDecimal.ZERO, TUBE.millilitres());
        assertThat(left).isNotEqualByComparingTo(TUBE.millilitres());
    }

    @Test
    void showsTheArithmeticInMetricUnits() {
        var findings = List.of(
                new Finding("rear-left", FindingKind.CRACK, Depth.DEEP, null, 12.0, ""),
                new Finding("front-left", FindingKind.VOID, null, null, null, ""),
                new Finding("rear-right", FindingKind.TEAR, null, null, 8.0, ""));

        var need = TubeNeed.of(BeadRun.of(findings, BeadSettings.DEFAULTS), BeadSettings.DEFAULTS, TUBE);

        assertThat(need.metricLines())
                .containsExactly(
                        "crack, deep, in rear-left, 12 cm: as measured, 12 cm",
                        "void, in front-left: not measured, taken as 30 cm",
                        "tear, in rear-right, 8 cm: not counted, patched as the maker of the membrane prescribes",
                        "bead length: 12 cm + 30 cm = 42 cm",
                        "bead: 420 mm × 25 mm × 6 mm = 63 mL",
                        "with 15 % waste: 63 mL × 1.15 = 72.45 mL",
                        "tubes: 72.45 mL ÷ 300 mL = 0.24, rounded up: 1");
    }

    @Test
    void showsTheSameInUsUnits() {
        // a bead of 1 in × 1/4 in over 120 in is 30 in³; a gallon of 231 in³ is 128 fl oz, so 16.62 fl oz
        var settings = new BeadSettings(Length.ofInches(1), Length.ofInches(0.25), 10, Length.ofInches(12));

        var need = TubeNeed.of(run(304.8), settings, Volume.ofUsFluidOunces(10.3));

        assertThat(need.usLines())
                .containsExactly(
                        "bead length: 120.00 in",
                        "bead: 120.00 in × 1.00 in × 0.25 in = 16.62 US fl oz",
                        "with 10 % waste: 18.29 US fl oz",
                        "tubes: 18.29 US fl oz ÷ 10.30 US fl oz, rounded up: 2");
    }

    @Test
    void countsOnlyWhatABeadMends() {
        var findings = List.of(
                new Finding("a", FindingKind.CRACK, Depth.SURFACE, null, 50.0, ""),
                new Finding("a", FindingKind.ADHESION, null, Extent.HOLDS, 50.0, ""),
                new Finding("a", FindingKind.DIRT, null, null, 50.0, ""),
                new Finding("a", FindingKind.CHALKING, null, null, 50.0, ""),
                new Finding("a", FindingKind.SOFT_SPOT, null, null, 50.0, ""),
                new Finding("a", FindingKind.ADHESION, null, Extent.LOOSE_HERE, 10.0, ""),
                new Finding("a", FindingKind.ATTACHMENT, null, Extent.ONE, 20.0, ""));

        assertThat(BeadRun.of(findings, BeadSettings.DEFAULTS).length()).isEqualTo(Length.ofCentimetres(30));
    }

    @Test
    void severalUnmeasuredPlacesCountThreeTimes() {
        var several = new Finding("a", FindingKind.ADHESION, null, Extent.LOOSE_IN_SEVERAL, null, "");

        assertThat(BeadRun.of(List.of(several), BeadSettings.DEFAULTS).length()).isEqualTo(Length.ofCentimetres(90));
    }

    @Test
    void nothingToSealTakesNoTube() {
        assertThat(TubeNeed.of(new BeadRun(List.of(), List.of()), BeadSettings.DEFAULTS, TUBE)
                        .tubes())
                .isZero();
    }

    @Test
    void refusesSettingsThatCannotBe() {
        assertThatThrownBy(() ->
                        new BeadSettings(Length.ofMillimetres(0), Length.ofMillimetres(6), 15, Length.ofMetres(1)))
                .hasMessageContaining("width of the bead");
        assertThatThrownBy(() ->
                        new BeadSettings(Length.ofMillimetres(25), Length.ofMillimetres(6), 101, Length.ofMetres(1)))
                .hasMessageContaining("waste");
        assertThatThrownBy(() -> TubeNeed.of(run(1), BeadSettings.DEFAULTS, Volume.ofMillilitres(0)))
                .hasMessageContaining("tube");
    }

    private static BeadRun run(double cm) {
        return new BeadRun(List.of(new BeadRun.Part("seam", Length.ofCentimetres(cm), true)), List.of());
    }
}
