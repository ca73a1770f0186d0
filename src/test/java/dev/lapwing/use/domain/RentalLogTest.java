package dev.lapwing.use.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Days, year strip and yard gaps. Offsets: IANA time zone database as shipped with JDK 17. */
class RentalLogTest {
    private static final ZoneId KATHMANDU = ZoneId.of("Asia/Kathmandu");
    private static final ZoneId OSLO = ZoneId.of("Europe/Oslo");

    @ParameterizedTest(name = "{0}: {1} to {2} touches {3} to {4}")
    @CsvSource({
        "Asia/Kathmandu,      2026-07-03T18:14:00Z, 2026-07-04T18:15:00Z, 2026-07-03, 2026-07-04",
        "Asia/Kathmandu,      2026-07-03T18:15:00Z, 2026-07-04T18:15:01Z, 2026-07-04, 2026-07-05",
        "Australia/Lord_Howe, 2026-04-04T13:00:00Z, 2026-04-05T13:29:59Z, 2026-04-05, 2026-04-05",
        "Pacific/Apia,        2011-12-30T09:00:00Z, 2011-12-30T11:00:00Z, 2011-12-29, 2011-12-31",
        "Europe/Oslo,         2026-03-28T23:00:00Z, 2026-03-29T22:00:00Z, 2026-03-29, 2026-03-29",
        "Europe/Oslo,         2026-07-03T10:00:00Z, 2026-07-03T10:00:00Z, 2026-07-03, 2026-07-03",
    })
    void spanTouchesLocalDays(ZoneId zone, Instant from, Instant until, LocalDate first, LocalDate last) {
        assertThat(new LogSpan(LogKind.RENTAL, from, until).days(zone)).isEqualTo(new DaySpan(first, last));
    }

    @Test
    void dayWithSeveralUsesIsOutFirstThenWorkshopThenStored() {
        var log = new RentalLog(
                List.of(
                        rental("2026-07-01T09:00", "2026-07-02T09:00"),
                        span(LogKind.STORAGE, "2026-07-02T09:00", "2026-07-05T09:00"),
                        span(LogKind.WORKSHOP, "2026-07-03T09:00", "2026-07-04T09:00")),
                OSLO);

        assertThat(log.days(LocalDate.of(2026, 6, 30), LocalDate.of(2026, 7, 6)))
                .containsExactly(
                        DayUse.UNRECORDED,
                        DayUse.OUT,
                        DayUse.OUT,
                        DayUse.WORKSHOP,
                        DayUse.WORKSHOP,
                        DayUse.STORED,
                        DayUse.YARD);
    }

    @Test
    void rentalStillOutRunsOn() {
        var log = new RentalLog(List.of(rental("2026-07-01T09:00", null)), OSLO);

        assertThat(log.days(LocalDate.of(2026, 7, 1), LocalDate.of(2026, 7, 3))).containsOnly(DayUse.OUT);
        assertThat(log.rentals()).containsExactly(new DaySpan(LocalDate.of(2026, 7, 1), null));
    }

    @Test
    void yearStripIsAYearWithoutGapsAndTurnsAtTheSeason() {
        LocalDate last = LocalDate.of(2026, 12, 31);
        var log = new RentalLog(
                List.of(
                        rental("2026-01-01T09:00", "2026-01-10T09:00"),
                        span(LogKind.STORAGE, "2026-11-01T09:00", null)),
                OSLO);

        var strip = YearStrip.endingOn(last, log, Season.of("04-01", "10-31"));

        assertThat(strip.runs())
                .containsExactly(
                        new YearStrip.Run(DayUse.OUT, false, LocalDate.of(2026, 1, 1), 10),
                        new YearStrip.Run(DayUse.YARD, false, LocalDate.of(2026, 1, 11), 80),
                        new YearStrip.Run(DayUse.YARD, true, LocalDate.of(2026, 4, 1), 214),
                        new YearStrip.Run(DayUse.STORED, false, LocalDate.of(2026, 11, 1), 61));
        assertThat(strip.runs().stream().mapToInt(YearStrip.Run::days).sum()).isEqualTo(YearStrip.DAYS);
    }

    @Test
    void gapsLieBetweenRentalsAndWorkshopWhateverTheOrderAndOverlap() {
        List<LogSpan> spans = List.of(
                rental("2026-07-20T09:00", "2026-07-25T09:00"),
                rental("2026-07-01T09:00", "2026-07-05T09:00"),
                span(LogKind.WORKSHOP, "2026-07-04T09:00", "2026-07-06T09:00"),
                span(LogKind.STORAGE, "2026-07-07T09:00", "2026-07-15T09:00"));

        assertThat(YardGaps.from(at("2026-07-02T09:00"), spans).all())
                .containsExactly(
                        new YardGap(at("2026-07-06T09:00"), at("2026-07-20T09:00")),
                        new YardGap(at("2026-07-25T09:00"), null));
        assertThat(YardGaps.from(at("2026-07-10T09:00"), spans).all().get(0).from())
                .isEqualTo(at("2026-07-10T09:00"));
    }

    @ParameterizedTest(name = "at {0}, due {1}, late after {2}: {3}")
    @CsvSource({
        "2026-07-15T12:00, 2026-07-16, 2026-07-16, in the yard until Friday 09:00",
        "2026-07-15T12:00, 2026-07-20, 2026-07-25, 'in the yard until Friday 09:00'",
        "2026-07-15T12:00, 2026-07-17, 2026-07-20, 'in the yard until Friday 09:00, not back before the work is late'",
        "2026-07-15T12:00, 2026-07-18, 2026-07-20, 'in the yard until Friday 09:00, goes out before its work is due, not back before the work is late'",
        "2026-07-08T12:00, 2026-07-16, 2026-07-16, in the yard until Fri 17 Jul 2026 09:00",
        "2026-07-18T12:00, 2026-07-20, 2026-07-20, out until Sat 25 Jul 2026 17:30",
        "2026-07-26T12:00, 2026-07-20, 2026-07-20, 'in the yard, nothing booked'",
    })
    void noteSaysWhereTheUnitIsAndWhetherTheWorkFitsIn(LocalDateTime now, LocalDate due, LocalDate late, String note) {
        Instant moment = now.atZone(OSLO).toInstant();
        var gaps = YardGaps.from(moment, List.of(rental("2026-07-17T09:00", "2026-07-25T17:30")));

        assertThat(GapNote.of(gaps, moment, due, late, OSLO)).isEqualTo(note);
    }

    @Test
    void unitOutWithoutAReturnDateSaysSo() {
        Instant now = at("2026-07-18T12:00");

        assertThat(GapNote.of(
                        YardGaps.from(now, List.of(rental("2026-07-17T09:00", null))),
                        now,
                        LocalDate.of(2026, 7, 20),
                        LocalDate.of(2026, 7, 20),
                        KATHMANDU))
                .isEqualTo("out, return not known");
    }

    private static LogSpan rental(String out, String back) {
        return span(LogKind.RENTAL, out, back);
    }

    private static LogSpan span(LogKind kind, String from, String until) {
        return new LogSpan(kind, at(from), until == null ? null : at(until));
    }

    private static Instant at(String local) {
        return LocalDateTime.parse(local).atZone(OSLO).toInstant();
    }
}
