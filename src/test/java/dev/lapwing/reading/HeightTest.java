package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class HeightTest {
    /** Source: shared/checks/units.csv, rows "conversion" (1 ft = 0.3048 m exactly). */
    @ParameterizedTest
    @CsvFileSource(files = "shared/checks/units.csv", numLinesToSkip = 1)
    void feetAndInchesAgreeWithTheTable(String row, Integer feet, Integer inches, Integer total, Double metres) {
        if (row.equals("conversion")) {
            for (String written : List.of("%d'%d\"", "%d ft %d in", "%dft%d", "%d' %d\"", "%d feet %d inches")) {
                assertThat(heights(String.format("bridge " + written + " there", feet, inches)))
                        .as(written)
                        .singleElement()
                        .satisfies(height -> assertThat(height.metres()).isCloseTo(metres, within(0.00005)));
            }
        } else {
            assertThat(row).isIn("mutcd", "rule");
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "3.2m|3.2",
                "3,20 m|3.2",
                "3m20|3.2",
                "3 m 05|3.05",
                "320cm|3.2",
                "3.2 metres|3.2",
                "11 foot|3.3528"
            })
    void metresAreReadAsTyped(String written, double metres) {
        assertThat(heights("bar at " + written))
                .singleElement()
                .satisfies(height -> assertThat(height.metres()).isCloseTo(metres, within(0.00005)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en|bar at ten foot two|3.0988",
                "en|nine feet six there|2.8956",
                "en|two metres ninety five|2.95",
                "es|un arco de dos metros noventa|2.9",
                "es|mide tres metros y medio|3.5",
                "es|dos metros noventa y cinco|2.95",
                "fr|deux mètres quatre-vingt-quinze|2.95",
                "fr|deux mètres soixante-dix au porche|2.7",
                "fr|trois mètres et demi|3.5",
                "fr|un portique de trois mètres|3.0"
            })
    void numberWordsAreRead(String language, String written, double metres) {
        assertThat(Readers.heights(written, language))
                .singleElement()
                .satisfies(height -> assertThat(height.metres()).isCloseTo(metres, within(0.00005)));
    }

    @Test
    void lengthsThatNoRoofHasAreLeftOut() {
        assertThat(heights("a 30 cm scratch, 120 m down the road, 7.5 m long, 12 mm bolt"))
                .isEmpty();
    }

    @Test
    void aLimitBelowTheUnitDrivenUnderIsEvidenceAndAHigherOneIsNot() {
        String note = "We went under a 3.0 m bridge at the farm.";
        assertThat(Readers.SHIPPED.read(note, null, 3.2).verdict()).isEqualTo(ContactVerdict.CONTACT);
        assertThat(Readers.SHIPPED.read(note, null, 2.8).verdict()).isEqualTo(ContactVerdict.NONE);
    }

    private static List<Height> heights(String note) {
        return Readers.heights(note, "en");
    }
}
