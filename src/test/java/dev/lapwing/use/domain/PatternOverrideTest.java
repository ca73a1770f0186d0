package dev.lapwing.use.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PatternOverrideTest {
    private static final UseInForce DERIVED =
            new UseInForce(UsePattern.FULL_TIME, LocalDate.of(2025, 1, 1), "out 300 of 365 days");
    private static final PatternOverride WINTER = seasonal("2026-10-01", "2027-03-31");

    @ParameterizedTest(name = "on {0}: {1} since {2}")
    @CsvSource({
        "2026-09-30, full-time, 2025-01-01",
        "2026-10-01, seasonal,  2026-10-01",
        "2027-03-31, seasonal,  2026-10-01",
        "2027-04-01, full-time, 2027-04-01",
        "2027-09-01, full-time, 2027-04-01",
    })
    void overrideCountsFromItsFirstToItsLastDay(LocalDate today, String pattern, LocalDate since) {
        UseInForce use = PatternOverride.inForce(DERIVED, List.of(WINTER), today);

        assertThat(use.pattern().word()).isEqualTo(pattern);
        assertThat(use.since()).isEqualTo(since);
    }

    @Test
    void overrideRenewedWithoutAGapKeepsItsFirstDay() {
        var renewed = seasonal("2027-04-01", "2027-12-31");

        UseInForce use = PatternOverride.inForce(DERIVED, List.of(renewed, WINTER), LocalDate.of(2027, 6, 1));

        assertThat(use.since()).isEqualTo(WINTER.from());
    }

    @Test
    void overrideThatAgreesWithTheLogKeepsTheDayOfTheLog() {
        var same = new PatternOverride(
                UsePattern.FULL_TIME, "long lets", "kim", LocalDate.of(2026, 5, 1), LocalDate.of(2026, 12, 31));

        UseInForce use = PatternOverride.inForce(DERIVED, List.of(same), LocalDate.of(2026, 6, 1));

        assertThat(use.since()).isEqualTo(DERIVED.since());
        assertThat(use.why()).isEqualTo("set by kim until 2026-12-31: long lets");
    }

    @Test
    void overrideThatFollowsOneOfAnotherPatternBeganWhenThatEnded() {
        var after = new PatternOverride(
                UsePattern.FULL_TIME, "long lets", "kim", LocalDate.of(2027, 4, 1), LocalDate.of(2027, 12, 31));

        UseInForce use = PatternOverride.inForce(DERIVED, List.of(after, WINTER), LocalDate.of(2027, 6, 1));

        assertThat(use.pattern()).isEqualTo(UsePattern.FULL_TIME);
        assertThat(use.since()).isEqualTo(after.from());
    }

    @Test
    void theOverrideThatBeganLastCounts() {
        var later = new PatternOverride(
                UsePattern.FULL_TIME, "winter lets", "kim", LocalDate.of(2026, 12, 1), LocalDate.of(2026, 12, 31));

        assertThat(PatternOverride.inForce(DERIVED, List.of(later, WINTER), LocalDate.of(2026, 12, 5)))
                .extracting(UseInForce::pattern)
                .isEqualTo(UsePattern.FULL_TIME);
    }

    @Test
    void reasonAndEndAreNeeded() {
        LocalDate day = LocalDate.of(2026, 5, 1);

        assertThatThrownBy(() -> new PatternOverride(UsePattern.SEASONAL, " ", "kim", day, day))
                .hasMessageContaining("needs a reason");
        assertThatThrownBy(() -> new PatternOverride(UsePattern.SEASONAL, "x", "kim", day, day.minusDays(1)))
                .hasMessageContaining("before the start");
        assertThatThrownBy(() -> new PatternOverride(UsePattern.UNKNOWN, "x", "kim", day, day))
                .hasMessageContaining("full-time or seasonal");
    }

    private static PatternOverride seasonal(String from, String until) {
        return new PatternOverride(
                UsePattern.SEASONAL, "summer lets only", "kim", LocalDate.parse(from), LocalDate.parse(until));
    }
}
