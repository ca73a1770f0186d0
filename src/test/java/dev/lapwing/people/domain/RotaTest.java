package dev.lapwing.people.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class RotaTest {
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 11, 23);

    @Test
    void whoIsCalledFirstComesFirst() {
        Rota rota = rota(
                turn(DayOfWeek.MONDAY, "08:00", "18:00", "mira", 2),
                turn(DayOfWeek.MONDAY, "08:00", "18:00", "olle", 1));

        assertThat(rota.onDuty(at(MONDAY, "08:00"))).containsExactly("olle", "mira");
        assertThat(rota.onDuty(at(MONDAY, "17:59"))).containsExactly("olle", "mira");
        assertThat(rota.onDuty(at(MONDAY, "18:00"))).isEmpty();
        assertThat(rota.onDuty(at(MONDAY, "07:59"))).isEmpty();
    }

    @Test
    void aNightTurnLastsIntoTheNextDay() {
        Rota rota = rota(turn(DayOfWeek.MONDAY, "22:00", "06:00", "mira", 1));

        assertThat(rota.onDuty(at(MONDAY.plusDays(1), "05:59"))).containsExactly("mira");
        assertThat(rota.onDuty(at(MONDAY, "05:59"))).isEmpty();
    }

    @Test
    void someoneAwayIsNotCalledAndLeavesAGap() {
        var absent = new Absence("mira", MONDAY.minusDays(3), MONDAY);
        var rota = new Rota(
                NEW_YORK,
                List.of(
                        turn(DayOfWeek.MONDAY, "08:00", "18:00", "mira", 1),
                        turn(DayOfWeek.TUESDAY, "08:00", "18:00", "mira", 1)),
                List.of(absent),
                List.of());

        assertThat(rota.onDuty(at(MONDAY, "12:00"))).isEmpty();
        assertThat(rota.onDuty(at(MONDAY.plusDays(1), "12:00"))).containsExactly("mira");
        assertThat(rota.gaps(at(MONDAY, "08:00"), at(MONDAY.plusDays(1), "20:00")))
                .containsExactly(
                        new Span(at(MONDAY, "08:00"), at(MONDAY.plusDays(1), "08:00")),
                        new Span(at(MONDAY.plusDays(1), "18:00"), at(MONDAY.plusDays(1), "20:00")));
    }

    @Test
    void aSwapPutsTheOtherOnDutyForThatDayOnly() {
        var rota = new Rota(
                NEW_YORK,
                List.of(turn(DayOfWeek.MONDAY, "08:00", "18:00", "mira", 1)),
                List.of(),
                List.of(new Swap(MONDAY, "mira", "olle")));

        assertThat(rota.onDuty(at(MONDAY, "12:00"))).containsExactly("olle");
        assertThat(rota.onDuty(at(MONDAY.plusWeeks(1), "12:00"))).containsExactly("mira");
    }

    @Test
    void whoTakesATurnWhileAwayDoesNotHaveIt() {
        var rota = new Rota(
                NEW_YORK,
                List.of(turn(DayOfWeek.MONDAY, "08:00", "18:00", "mira", 1)),
                List.of(new Absence("olle", MONDAY, MONDAY)),
                List.of(new Swap(MONDAY, "mira", "olle")));

        assertThat(rota.onDuty(at(MONDAY, "12:00"))).isEmpty();
    }

    @Test
    void turnsThatMeetLeaveNoGapAcrossAChangeOfTheClocks() {
        List<DutyTurn> everyDay = new ArrayList<>();
        for (DayOfWeek weekday : DayOfWeek.values()) {
            everyDay.add(turn(weekday, "02:30", "02:30", "mira", 1));
        }
        var rota = new Rota(NEW_YORK, everyDay, List.of(), List.of());

        // 02:30 does not exist on 8 March 2026 and 01:30 comes twice on 1 November 2026 in New York (IANA time zones).
        assertThat(rota.gaps(Instant.parse("2026-03-06T00:00:00Z"), Instant.parse("2026-03-11T00:00:00Z")))
                .isEmpty();
        assertThat(rota.gaps(Instant.parse("2026-10-30T00:00:00Z"), Instant.parse("2026-11-04T00:00:00Z")))
                .isEmpty();
    }

    @Test
    void aDepotWithoutARotaHasNoGaps() {
        assertThat(rota().gaps(at(MONDAY, "00:00"), at(MONDAY, "23:00"))).isEmpty();
        assertThat(rota().kept()).isFalse();
    }

    private static Rota rota(DutyTurn... turns) {
        return new Rota(NEW_YORK, List.of(turns), List.of(), List.of());
    }

    private static DutyTurn turn(DayOfWeek weekday, String starts, String ends, String username, int place) {
        return new DutyTurn(weekday, LocalTime.parse(starts), LocalTime.parse(ends), username, place);
    }

    private static Instant at(LocalDate date, String time) {
        return date.atTime(LocalTime.parse(time)).atZone(NEW_YORK).toInstant();
    }
}
