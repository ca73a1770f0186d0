package dev.lapwing.record.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitChange;
import dev.lapwing.use.domain.RentalLog;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.YearStrip;
import dev.lapwing.use.storage.Stay;
import dev.lapwing.use.storage.UnitLogs;
import dev.lapwing.web.Dates;
import dev.lapwing.web.PersonNames;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/**
 * How a unit was used and what was changed in what is known of it, as its page shows it.
 *
 * @param stays the latest stays in storage and in the workshop
 * @param changes the latest changes, the newest first
 */
record UnitUseView(YearView year, List<StayRow> stays, List<ChangeRow> changes) {
    private static final int MOST_STAYS = 8;
    private static final int MOST_CHANGES = 40;

    /** One stay; an open end says so. */
    record StayRow(UUID id, String kind, String from, String until, String place, String note) {}

    /** One changed field; nothing is said as a dash. */
    record ChangeRow(String when, String who, String field, String old, String now, String reason) {}

    static UnitUseView of(Unit unit, Instant now, PersonNames names) {
        ZoneId zone = unit.depot.zoneId();
        return new UnitUseView(
                year(unit, now),
                Stay.before(unit, null, MOST_STAYS).stream()
                        .map(stay -> row(stay, zone))
                        .toList(),
                UnitChange.of(unit.id, 0, MOST_CHANGES).stream()
                        .map(change -> row(change, zone, names))
                        .toList());
    }

    private static YearView year(Unit unit, Instant now) {
        ZoneId zone = unit.depot.zoneId();
        LocalDate today = unit.depot.dateAt(now);
        Instant start = today.minusDays(YearStrip.DAYS).atStartOfDay(zone).toInstant();
        var spans = UnitLogs.since(List.of(unit.id), start).getOrDefault(unit.id, List.of());
        Season own = unit.seasonOpens == null ? null : Season.of(unit.seasonOpens, unit.seasonCloses);
        Season season = Season.inForce(own, new Season(unit.depot.opens(), unit.depot.closes()));
        return YearView.of(YearStrip.endingOn(today, new RentalLog(spans, zone), season));
    }

    private static StayRow row(Stay stay, ZoneId zone) {
        return new StayRow(
                stay.id,
                stay.kind.word(),
                Dates.time(stay.fromAt, zone),
                stay.untilAt == null ? "until further notice" : Dates.time(stay.untilAt, zone),
                stay.place == null ? null : stay.place.word(),
                stay.note);
    }

    private static ChangeRow row(UnitChange change, ZoneId zone, PersonNames names) {
        return new ChangeRow(
                Dates.time(change.changedAt, zone),
                names.of(change.changedBy),
                FieldNames.of(change.field),
                change.oldText == null ? "nothing" : change.oldText,
                change.newText == null ? "nothing" : change.newText,
                change.reason);
    }
}
