package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static dev.lapwing.care.domain.CareFixture.fullTimeUnit;
import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Local days and instants at depots in awkward zones. Offsets: IANA time zone database as shipped with JDK 17. */
class ZonesTest {
    @ParameterizedTest(name = "{0} reported {1} is due on {2}")
    @CsvSource({
        "Asia/Kathmandu,      2026-07-03T18:14:59Z, 2026-07-03",
        "Asia/Kathmandu,      2026-07-03T18:15:00Z, 2026-07-04",
        "Australia/Eucla,     2026-07-03T15:14:59Z, 2026-07-03",
        "Australia/Eucla,     2026-07-03T15:15:00Z, 2026-07-04",
        "Pacific/Chatham,     2026-07-03T11:14:59Z, 2026-07-03",
        "Pacific/Chatham,     2026-07-03T11:15:00Z, 2026-07-04",
        "Pacific/Chatham,     2026-01-03T10:15:00Z, 2026-01-04",
        "Australia/Adelaide,  2026-07-03T14:30:00Z, 2026-07-04",
        "Australia/Lord_Howe, 2026-01-03T13:00:00Z, 2026-01-04",
        "Australia/Lord_Howe, 2026-07-03T13:29:59Z, 2026-07-03",
        "Australia/Lord_Howe, 2026-07-03T13:30:00Z, 2026-07-04",
        "Pacific/Apia,        2011-12-30T09:59:59Z, 2011-12-29",
        "Pacific/Apia,        2011-12-30T10:00:00Z, 2011-12-31",
    })
    void strikeIsDueAtItsInstantOnTheLocalDay(String zone, Instant reported, LocalDate day) {
        Change.Create create = event(TaskOrigin.STRIKE, ZoneId.of(zone), reported);

        assertThat(create.dueAt()).isEqualTo(reported);
        assertThat(create.window()).isEqualTo(new DueWindow(day, day, day));
    }

    @ParameterizedTest(name = "{0}: water inside at {1} is due a day of 24 hours later, local {2}")
    @CsvSource({
        "America/New_York,    2027-03-13T02:30, 2027-03-14T03:30",
        "America/New_York,    2026-10-31T01:30, 2026-11-01T01:30",
        "Europe/Oslo,         2027-03-27T12:00, 2027-03-28T13:00",
        "Europe/Oslo,         2026-10-24T12:00, 2026-10-25T11:00",
        "Australia/Lord_Howe, 2026-10-03T12:00, 2026-10-04T12:30",
        "Australia/Lord_Howe, 2026-04-04T12:00, 2026-04-05T11:30",
    })
    void hoursAreCountedAsTimeThatPasses(String zone, LocalDateTime reported, LocalDateTime due) {
        ZoneId depot = ZoneId.of(zone);

        Change.Create create =
                event(TaskOrigin.WATER_INSIDE, depot, reported.atZone(depot).toInstant());

        assertThat(create.dueAt().atZone(depot).toLocalDateTime()).isEqualTo(due);
        assertThat(create.window().due()).isEqualTo(due.toLocalDate());
    }

    @Test
    void twentyFourHoursReachOverTheDateApiaSkipped() {
        ZoneId apia = ZoneId.of("Pacific/Apia");
        Instant noon = LocalDateTime.of(2011, 12, 29, 12, 0).atZone(apia).toInstant();

        assertThat(event(TaskOrigin.WATER_INSIDE, apia, noon).window().due()).isEqualTo(date("2011-12-31"));
    }

    @Test
    void workDueOnTheDateApiaSkippedIsNeitherLostNorDoubled() {
        var unit = fullTimeUnit().inspected("2011-09-30");
        unit.service = new Service(date("2005-01-01"), date("2004-12-01"), null, false);
        unit.zone = ZoneId.of("Pacific/Apia");
        unit.sweep("2011-12-29");
        assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2011-12-30"));

        assertThat(unit.sweep("2011-12-31").changesAnything()).isFalse();

        unit.signOff(TaskKind.INSPECTION, "2011-12-31").sweep("2011-12-31");
        assertThat(unit.onlyOpen().window().due()).isEqualTo(date("2012-03-31"));
    }

    @ParameterizedTest(name = "last done {0}: due {1}")
    @CsvSource({
        "2026-12-28, 2027-03-29",
        "2026-08-01, 2026-10-31",
        "2027-11-30, 2028-02-29",
        "2028-02-29, 2028-05-30",
        "2099-12-31, 2100-04-01",
    })
    void ninetyOneDaysAreLocalDaysThroughClockChangesAndLeapDays(String last, String due) {
        assertThat(fullTimeUnit().inspected(last).plan(last).next().window().due())
                .isEqualTo(date(due));
    }

    /** Returns the work that answers an event at a depot in a zone. */
    static Change.Create event(TaskOrigin origin, ZoneId zone, Instant at) {
        LocalDate day = at.atZone(zone).toLocalDate();
        var unit = fullTimeUnit();
        unit.zone = zone;
        unit.service = new Service(date("2005-01-01"), date("2004-12-01"), null, false);
        unit.events.add(new CareEvent("E1", origin, at, day));
        return new DueEngine(CareFixture.RULES)
                .plan(unit.facts(), day).changes().stream()
                        .filter(Change.Create.class::isInstance)
                        .map(Change.Create.class::cast)
                        .filter(create -> create.origin() == origin)
                        .findFirst()
                        .orElseThrow();
    }
}
