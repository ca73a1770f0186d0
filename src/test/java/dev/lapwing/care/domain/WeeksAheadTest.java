package dev.lapwing.care.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;

/** Work and yard days by week. 26 August 2026 is a Wednesday; its week begins on Monday the 24th. */
class WeeksAheadTest {
    private static final ZoneId ZONE = ZoneId.of("America/Phoenix");
    private static final LocalDate TODAY = LocalDate.of(2026, 8, 26);
    private final WeeksAhead ahead = new WeeksAhead(TODAY, ZONE, 3);

    private static WeeksAhead.Out out(String from, String until) {
        return new WeeksAhead.Out(
                LocalDateTime.parse(from).atZone(ZONE).toInstant(),
                until == null ? null : LocalDateTime.parse(until).atZone(ZONE).toInstant());
    }

    @Test
    void workCountsInTheWeekOfItsDueDayAndOverdueWorkInThisOne() {
        ahead.addTask(TODAY.minusDays(40));
        ahead.addTask(LocalDate.of(2026, 8, 30));
        ahead.addTask(LocalDate.of(2026, 8, 31));
        ahead.addTask(LocalDate.of(2026, 9, 14));

        assertThat(ahead.weeks(0)).extracting(WeeksAhead.Week::tasks).containsExactly(2, 1, 0);
        assertThat(ahead.weeks(0).get(0).monday()).isEqualTo(LocalDate.of(2026, 8, 24));
    }

    @Test
    void aUnitIsInTheYardOnDaysWhenItIsNotOutAtNoon() {
        ahead.addOut(out("2026-08-29T13:00", "2026-08-31T11:00"));

        assertThat(ahead.weeks(1)).extracting(WeeksAhead.Week::yardDays).containsExactly(6L, 7L, 7L);
    }

    @Test
    void aUnitWhoseReturnIsNotKnownStaysOut() {
        ahead.addOut(out("2026-09-02T09:00", null));

        assertThat(ahead.weeks(2)).extracting(WeeksAhead.Week::yardDays).containsExactly(14L, 9L, 7L);
    }

    @Test
    void aRentalThatBeganBeforeTheFirstWeekCountsFromIt() {
        ahead.addOut(out("2026-07-01T09:00", "2026-08-25T18:00"));

        assertThat(ahead.weeks(1).get(0).yardDays()).isEqualTo(5);
    }
}
