package dev.lapwing.record.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;

/** Source: shared/checks/proportion.csv (NIST/SEMATECH s7.2.4.1; Newcombe 1998; computed rows). */
class WilsonIntervalTest {
    @Test
    void agreesWithPublishedAndComputedValues() throws IOException {
        int rows = 0;
        try (Reader file = Files.newBufferedReader(Path.of("shared/checks/proportion.csv"));
                CSVParser parser = CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(file)) {
            for (CSVRecord row : parser) {
                WilsonInterval interval = WilsonInterval.of(
                        Long.parseLong(row.get("successes")),
                        Long.parseLong(row.get("n")),
                        Double.parseDouble(row.get("z")));
                check(row, "lower", interval.lower(), 0.000001);
                check(row, "upper", interval.upper(), 0.000001);
                check(row, "published_lower", interval.lower(), 0.00005);
                check(row, "published_upper", interval.upper(), 0.00005);
                rows++;
            }
        }
        assertThat(rows).isEqualTo(8);
    }

    private static void check(CSVRecord row, String column, double actual, double tolerance) {
        if (!row.get(column).isEmpty()) {
            assertThat(actual).as(row + " " + column).isCloseTo(Double.parseDouble(row.get(column)), within(tolerance));
        }
    }

    @Test
    void knowsNothingWithoutATrial() {
        assertThat(WilsonInterval.of(0, 0)).isEqualTo(new WilsonInterval(0, 1));
    }

    @Test
    void refusesMoreSuccessesThanTrials() {
        assertThatThrownBy(() -> WilsonInterval.of(3, 2)).isInstanceOf(IllegalArgumentException.class);
    }
}
