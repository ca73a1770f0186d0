package dev.lapwing.use.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SeasonTest {
    @ParameterizedTest(name = "{0} to {1} on {2}: run {3} to {4}, inside {5}")
    @CsvSource({
        "04-01, 10-31, 2026-04-01, 2026-04-01, 2026-10-31, true",
        "04-01, 10-31, 2026-10-31, 2026-04-01, 2026-10-31, true",
        "04-01, 10-31, 2026-11-01, 2026-04-01, 2026-10-31, false",
        "04-01, 10-31, 2026-03-31, 2025-04-01, 2025-10-31, false",
        "10-01, 04-30, 2026-12-31, 2026-10-01, 2027-04-30, true",
        "10-01, 04-30, 2027-01-01, 2026-10-01, 2027-04-30, true",
        "10-01, 04-30, 2027-04-30, 2026-10-01, 2027-04-30, true",
        "10-01, 04-30, 2027-05-01, 2026-10-01, 2027-04-30, false",
        "12-01, 02-29, 2028-02-29, 2027-12-01, 2028-02-29, true",
        "12-01, 02-29, 2027-02-28, 2026-12-01, 2027-02-28, true",
        "12-01, 02-29, 2027-03-01, 2026-12-01, 2027-02-28, false",
    })
    void runsReturnEveryYearInBothHemispheres(
            String opens, String closes, LocalDate day, LocalDate first, LocalDate last, boolean inside) {
        var season = Season.of(opens, closes);

        assertThat(season.latestOpenedBy(day)).isEqualTo(new DaySpan(first, last));
        assertThat(season.contains(day)).isEqualTo(inside);
    }

    @ParameterizedTest
    @CsvSource({"04-01, 05-20", "01-01, 12-31", "03-01, 01-15", "06-01, 06-01"})
    void seasonTooShortOrTooLongForTwoInspectionsIsRefused(String opens, String closes) {
        assertThatThrownBy(() -> Season.of(opens, closes))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("at least 70 days inside and outside");
    }

    @Test
    void seasonOfTheUnitCountsBeforeThatOfItsDepot() {
        var ofUnit = Season.of("05-01", "09-30");
        var ofDepot = Season.of("04-01", "10-31");

        assertThat(Season.inForce(ofUnit, ofDepot)).isEqualTo(ofUnit);
        assertThat(Season.inForce(null, ofDepot)).isEqualTo(ofDepot);
        assertThat(Season.inForce(null, null)).isNull();
    }
}
