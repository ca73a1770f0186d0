package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static dev.lapwing.care.domain.CareFixture.seasonalUnit;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.use.domain.UsePattern;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The facts of the trade, each common practice, no source, as examples of the default rules. */
class FactsOfTheTradeTest {
    @ParameterizedTest(name = "{0}, last done {1}: {2} due {3}")
    @CsvSource({
        "full-time, 2026-08-12, interval,       2026-11-11",
        "unknown,   2026-08-12, interval,       2026-11-11",
        "full-time, 2027-12-01, interval,       2028-03-01",
        "seasonal,  2026-11-10, season opening, 2027-04-01",
        "seasonal,  2027-03-20, season closing, 2027-11-14",
        "seasonal,  2026-04-01, season closing, 2026-11-14",
    })
    void nextWorkFollowsThePattern(String pattern, String last, String origin, String due) {
        var unit = fullTimeUnit().use(pattern(pattern), null).inspected(last);

        NextDue next = unit.plan(last).nextDue().orElseThrow();

        assertThat(next.kind()).isEqualTo(TaskKind.INSPECTION);
        assertThat(next.origin().word()).isEqualTo(origin);
        assertThat(next.window().due()).isEqualTo(date(due));
    }

    @ParameterizedTest(name = "{0} gets {1} a year")
    @CsvSource({"full-time, 4, 5", "unknown, 4, 5", "seasonal, 2, 2"})
    void workDoneOnItsDayGivesTheUsualNumberInAYear(String pattern, int least, int most) {
        var unit = fullTimeUnit().use(pattern(pattern), null).inspected("2026-02-15");

        List<LocalDate> days = doneOnTheDay(unit, date("2030-12-31"));

        for (int year = 2027; year <= 2030; year++) {
            int wanted = year;
            assertThat(days.stream().filter(day -> day.getYear() == wanted).count())
                    .isBetween((long) least, (long) most);
        }
    }

    @Test
    void strikeIsInspectedAtOnceAndTheClockStartsAtTheReport() {
        var unit = seasonalUnit().inspected(TaskOrigin.SEASON_OPENING, "2026-03-30");
        Instant reported = Instant.parse("2026-07-03T21:40:00Z");
        unit.events.add(new CareEvent("S1", TaskOrigin.STRIKE, reported, date("2026-07-03")));

        Plan plan = unit.plan("2026-07-04");

        assertThat(plan.changes())
                .filteredOn(change -> change instanceof Change.Create create && create.dueAt() != null)
                .singleElement()
                .satisfies(change -> {
                    var create = (Change.Create) change;
                    assertThat(create.kind()).isEqualTo(TaskKind.STRIKE_INSPECTION);
                    assertThat(create.dueAt()).isEqualTo(reported);
                    assertThat(create.event()).isEqualTo("S1");
                    assertThat(create.rule()).isEqualTo(new RuleRef("strike", 1));
                });
    }

    @Test
    void theReasonNamesPatternLastDateIntervalAndRule() {
        var unit = fullTimeUnit().inspected("2026-08-12");

        assertThat(unit.plan("2026-08-12").next().why())
                .isEqualTo("wash with inspection: full-time, last done 12 Aug 2026, 91 days, rule full-time v1");
    }

    private static List<LocalDate> doneOnTheDay(CareFixture unit, LocalDate until) {
        var days = new ArrayList<LocalDate>();
        var engine = new DueEngine(CareFixture.RULES);
        for (LocalDate day = date("2026-02-15"); !day.isAfter(until); day = day.plusDays(1)) {
            unit.sweep(engine, day);
            OpenTask task = unit.onlyOpen();
            if (!task.window().due().isAfter(day)) {
                unit.signOff(task, day);
                days.add(day);
            }
        }
        return days;
    }

    private static UsePattern pattern(String word) {
        for (UsePattern pattern : UsePattern.values()) {
            if (pattern.word().equals(word)) {
                return pattern;
            }
        }
        throw new IllegalArgumentException(word);
    }
}
