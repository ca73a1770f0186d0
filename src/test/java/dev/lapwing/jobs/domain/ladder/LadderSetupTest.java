package dev.lapwing.jobs.domain.ladder;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import dev.lapwing.jobs.domain.measure.Length;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Source: shared/checks/ladder.csv, arithmetic on 29 CFR 1926.1053(b)(5)(i) and the 3 ft of 1926.1053(b)(1). */
class LadderSetupTest {
    private static final double PRINTED_DIGITS = 0.0005;

    static List<Row> computedRows() {
        return rows().stream()
                .filter(row -> row.text("row_type").equals("computed"))
                .toList();
    }

    private static List<Row> rows() {
        return Table.read("ladder.csv", SharedFiles.read("checks/ladder.csv"), "row_type", "quantity", "value");
    }

    @ParameterizedTest
    @MethodSource("computedRows")
    void aWorkingLengthGivesTheOffsetAndHeightOfTheFile(Row row) {
        var setup = LadderSetup.forWorkingLength(Length.ofFeet(row.number("value")));

        assertThat(setup.baseOffset().feet().doubleValue()).isCloseTo(row.number("base_offset_ft"), within(0.005));
        assertThat(setup.baseOffset().metres().doubleValue()).isCloseTo(row.number("base_offset_m"), within(0.00005));
        assertThat(setup.landing().feet().doubleValue())
                .isCloseTo(row.number("height_reached_ft"), within(PRINTED_DIGITS));
    }

    @ParameterizedTest
    @MethodSource("computedRows")
    void theHeightOfTheFileGivesBackTheWorkingLength(Row row) {
        var setup = LadderSetup.forLanding(Length.ofFeet(row.number("height_reached_ft")));

        assertThat(setup.workingLength().feet().doubleValue()).isCloseTo(row.number("value"), within(0.001));
        assertThat(setup.baseOffset().feet().doubleValue()).isCloseTo(row.number("base_offset_ft"), within(0.005));
    }

    @Test
    void theFileHasItsTenComputedRows() {
        assertThat(computedRows()).hasSize(10);
    }

    @ParameterizedTest
    @MethodSource("computedRows")
    void theRailsReachThreeFeetAboveTheLandingMeasuredUpright(Row row) {
        double extension = fact("upper_landing_extension_ft");
        var setup = LadderSetup.forLanding(Length.ofFeet(row.number("height_reached_ft")));

        double tip = setup.railLength().feet().doubleValue() * Math.sin(Math.toRadians(LadderSetup.angleDegrees()));

        assertThat(tip - row.number("height_reached_ft")).isCloseTo(extension, within(1e-6));
    }

    @Test
    void theRatioAndTheAngleAreThoseOfTheFile() {
        var setup = LadderSetup.forLanding(Length.ofMetres(3.2));
        double ratio = setup.baseOffset().metres().doubleValue()
                / setup.workingLength().metres().doubleValue();

        assertThat(ratio).isCloseTo(fact("setup_ratio"), within(1e-9));
        assertThat(LadderSetup.angleDegrees()).isCloseTo(fact("test_angle_deg"), within(0.05));
    }

    @Test
    void saysItInBothUnitsAndRoundsWhatMustSufficeUp() {
        // 3.3528 m is 11 ft; 3.3528 / 0.968246 = 3.4628 m; a quarter is 0.8657 m; rails (3.3528 + 0.9144) / 0.968246 =
        // 4.4071 m
        assertThat(LadderSetup.forLanding(Length.ofFeet(11)).lines())
                .containsExactly(
                        "Roof edge at 3.36 m (11 ft 0 in): working length along the ladder 3.46 m (11 ft 4 in).",
                        "Foot of the ladder a quarter of that out from the edge: 0.87 m (2 ft 10 in).",
                        "Rails three feet (0.91 m) above the edge: a ladder of at least 4.41 m (14 ft 6 in).",
                        "Too short? Take another ladder, or do not go up.");
    }

    private static double fact(String quantity) {
        return rows().stream()
                .filter(row -> row.text("row_type").equals("fact"))
                .filter(row -> row.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }
}
