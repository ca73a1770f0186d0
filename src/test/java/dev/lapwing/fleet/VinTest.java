package dev.lapwing.fleet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The check digit, row by row against shared/checks/vin.csv (49 CFR 565.15(c) and the sources each row names). */
class VinTest {
    static Stream<CSVRecord> rows() throws IOException {
        try (Reader file = Files.newBufferedReader(Path.of("shared/checks/vin.csv"))) {
            return CSVFormat.RFC4180
                    .builder()
                    .setHeader()
                    .setSkipHeaderRecord(true)
                    .get()
                    .parse(file)
                    .getRecords()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("rows")
    void theStrictReadingAgreesWithTheFile(CSVRecord row) {
        assertThat(Vin.isValid(row.get("vin"))).isEqualTo(Boolean.parseBoolean(row.get("valid_check_digit")));
    }

    @Test
    void theFileHasRowsOfBothKinds() throws IOException {
        assertThat(rows().map(row -> row.get("valid_check_digit"))).contains("true", "false");
    }

    @Test
    void whatIsTypedInSmallLettersAndWithSpacesIsReadAsOnThePlate() {
        String vin = Vin.normalised(" 1g4ah59h 45g118341");

        assertThat(vin).isEqualTo("1G4AH59H45G118341");
        assertThat(Vin.warning(vin)).isEmpty();
    }

    @Test
    void aFailingCheckDigitIsAWarningInWords() {
        assertThat(Vin.warning("1G4AH59H45G118331"))
                .hasValueSatisfying(words -> assertThat(words).contains("check digit"));
        assertThat(Vin.warning("SHORT"))
                .hasValueSatisfying(words -> assertThat(words).contains("17 letters and digits"));
    }
}
