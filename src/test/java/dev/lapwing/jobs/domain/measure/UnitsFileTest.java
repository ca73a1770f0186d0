package dev.lapwing.jobs.domain.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class UnitsFileTest {
    /** Source: shared/checks/units.csv, rows of conversion (international yard and pound, 1959). */
    static List<Row> conversions() {
        return Table.read("units.csv", SharedFiles.read("checks/units.csv"), "row", "feet", "inches", "metres").stream()
                .filter(row -> row.text("row").equals("conversion"))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("conversions")
    void convertsEveryRowOfTheFileExactly(Row row) {
        var length = Length.ofFeetAndInches((int) row.number("feet"), (int) row.number("inches"));

        assertThat(length.metres()).isEqualByComparingTo(row.text("metres"));
        assertThat(length.inches()).isEqualByComparingTo(row.text("total_inches"));
        assertThat(new Length(new BigDecimal(row.text("metres"))).feetAndInches(RoundingMode.UNNECESSARY))
                .isEqualTo(row.text("feet") + " ft " + row.text("inches") + " in");
    }

    @Test
    void theFileHasItsTenConversions() {
        assertThat(conversions()).hasSize(10);
    }

    /** Source: shared/checks/units.csv, row of the rule: a vehicle height is rounded up, a clearance down. */
    @ParameterizedTest
    @CsvSource({"3.5052, 11 ft 6 in, 11 ft 6 in", "3.5053, 11 ft 7 in, 11 ft 6 in", "3.6575, 12 ft 0 in, 11 ft 11 in"})
    void roundsAPartOfAnInchAsTold(double metres, String up, String down) {
        assertThat(Length.ofMetres(metres).feetAndInches(RoundingMode.CEILING)).isEqualTo(up);
        assertThat(Length.ofMetres(metres).feetAndInches(RoundingMode.FLOOR)).isEqualTo(down);
    }

    @Test
    void oneUsFluidOunceIsExact() {
        // 231 cubic inches make a gallon of 128 fluid ounces; the factors are from memory, the product is computed
        var gallon = Volume.ofBead(Length.ofInches(231), Length.ofInches(1), Length.ofInches(1));

        assertThat(Volume.ofUsFluidOunces(1).millilitres()).isEqualByComparingTo("29.5735295625");
        assertThat(Volume.ofUsFluidOunces(128).millilitres()).isEqualByComparingTo(gallon.millilitres());
        assertThat(Volume.ofMillilitres(300).usFluidOunces().doubleValue()).isCloseTo(10.144, within(0.0005));
    }

    @Test
    void nothingIsShorterOrEmptierThanNothing() {
        assertThatThrownBy(() -> Length.ofMetres(-0.01)).hasMessageContaining("not negative");
        assertThatThrownBy(() -> Volume.ofMillilitres(-1)).hasMessageContaining("not negative");
    }

    @Test
    void equalLengthsAreEqualWhateverTheyWereGivenIn() {
        assertThat(Length.ofCentimetres(30)).isEqualTo(Length.ofMetres(0.3)).isEqualTo(Length.ofMillimetres(300));
        assertThat(Length.ofFeet(3)).isEqualTo(Length.ofInches(36)).isEqualTo(Length.ofMetres(0.9144));
    }
}
