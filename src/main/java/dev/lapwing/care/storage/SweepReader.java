package dev.lapwing.care.storage;

import dev.lapwing.care.domain.CareEvent;
import dev.lapwing.care.domain.DoneWork;
import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.OpenTask;
import dev.lapwing.care.domain.Roof;
import dev.lapwing.care.domain.RoofEventKind;
import dev.lapwing.care.domain.Service;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.fleet.Footing;
import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Surface;
import dev.lapwing.use.UnitRange;
import dev.lapwing.use.domain.Season;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Reads what the engine needs of many units at once: one statement per kind of fact, whatever the number of units. */
public final class SweepReader {
    private static final String OF_RANGE = " from care_task t" + UnitRange.WHERE_UNIT_OF.formatted("t.unit_id");

    private static final String UNITS = "select id, number, surface, footing, installed_on, storage, season_opens,"
            + " season_closes, in_service_from, out_of_service_on, away_since, sold, season_since from unit";

    private static final String EVENT = "coalesce(t.strike_id, t.event_id)";

    private final Connection database;

    /** @param database an open connection inside a transaction; the caller closes it */
    public SweepReader(Connection database) {
        this.database = database;
    }

    /** Returns up to {@code limit} units of a depot that follow a number. */
    public List<SweptUnit> unitsAfter(String depot, String number, int limit) throws SQLException {
        String sql = UNITS + " where depot_code = ? and number > ? order by number fetch first ? rows only";
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, depot);
            query.setString(2, number);
            query.setInt(3, limit);
            return units(query);
        }
    }

    /** Returns the units of a depot from one number to another, both included. */
    public List<SweptUnit> unitsBetween(String depot, String first, String last) throws SQLException {
        String sql = UNITS + " where depot_code = ? and number >= ? and number <= ? order by number";
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, depot);
            query.setString(2, first);
            query.setString(3, last);
            return units(query);
        }
    }

    /** A unit by its id and number only: what can be read of it even when the rest of its row cannot. */
    public record UnitKey(UUID id, String number) {}

    /** Returns up to {@code limit} units of a depot that follow a number, without reading more of them. */
    public List<UnitKey> keysAfter(String depot, String number, int limit) throws SQLException {
        String sql = "select id, number from unit where depot_code = ? and number > ? order by number"
                + " fetch first ? rows only";
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, depot);
            query.setString(2, number);
            query.setInt(3, limit);
            List<UnitKey> keys = new ArrayList<>();
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    keys.add(new UnitKey(row.getObject(1, UUID.class), row.getString(2)));
                }
            }
            return keys;
        }
    }

    /** Returns one unit, as a list like the others; empty when there is none. */
    public List<SweptUnit> unit(UUID id) throws SQLException {
        try (PreparedStatement query = database.prepareStatement(UNITS + " where id = ?")) {
            query.setObject(1, id);
            return units(query);
        }
    }

    private static List<SweptUnit> units(PreparedStatement query) throws SQLException {
        List<SweptUnit> units = new ArrayList<>();
        try (ResultSet row = query.executeQuery()) {
            while (row.next()) {
                units.add(unit(row));
            }
        }
        return units;
    }

    private static SweptUnit unit(ResultSet row) throws SQLException {
        Storage storage = Storage.valueOf(row.getString(6));
        var roof = new Roof(
                Surface.valueOf(row.getString(3)).word(),
                Footing.valueOf(row.getString(4)).word(),
                row.getObject(5, LocalDate.class),
                storage != Storage.INSIDE,
                storage == Storage.UNDER_TREES);
        var service = new Service(
                row.getObject(9, LocalDate.class),
                row.getObject(11, LocalDate.class),
                row.getObject(10, LocalDate.class),
                row.getBoolean(12));
        String opens = row.getString(7);
        Season season = opens == null ? null : Season.of(opens, row.getString(8));
        LocalDate seasonSince = row.getObject(13, LocalDate.class);
        return new SweptUnit(row.getObject(1, UUID.class), row.getString(2), roof, service, season, seasonSince);
    }

    /** Returns the work done on the units of a range since a day. */
    public Map<UUID, List<DoneWork>> doneSince(UnitRange range, LocalDate day) throws SQLException {
        Map<UUID, List<DoneWork>> done = new HashMap<>();
        String sql = "select t.unit_id, t.kind, t.origin, t.done_on, " + EVENT + OF_RANGE
                + " and t.state = 'DONE' and t.done_on >= ?";
        try (PreparedStatement query = ranged(sql, range)) {
            query.setObject(4, day);
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    done.computeIfAbsent(row.getObject(1, UUID.class), none -> new ArrayList<>())
                            .add(new DoneWork(
                                    TaskKind.valueOf(row.getString(2)),
                                    TaskOrigin.valueOf(row.getString(3)),
                                    row.getObject(4, LocalDate.class),
                                    row.getString(5)));
                }
            }
        }
        return done;
    }

    /** Returns the open tasks of the units of a range. */
    public Map<UUID, List<OpenTask>> open(UnitRange range, ZoneId zone) throws SQLException {
        Map<UUID, List<OpenTask>> open = new HashMap<>();
        String sql = "select t.unit_id, t.id, t.kind, t.origin, t.opens, t.due, t.late, t.created_at, t.touched," + " "
                + EVENT + OF_RANGE + " and t.state not in ('DONE', 'CALLED_OFF')";
        try (PreparedStatement query = ranged(sql, range);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                open.computeIfAbsent(row.getObject(1, UUID.class), none -> new ArrayList<>())
                        .add(openTask(row, zone));
            }
        }
        return open;
    }

    private static OpenTask openTask(ResultSet row, ZoneId zone) throws SQLException {
        var window = new DueWindow(
                row.getObject(5, LocalDate.class),
                row.getObject(6, LocalDate.class),
                row.getObject(7, LocalDate.class));
        return new OpenTask(
                row.getString(2),
                TaskKind.valueOf(row.getString(3)),
                TaskOrigin.valueOf(row.getString(4)),
                window,
                row.getObject(8, OffsetDateTime.class).atZoneSameInstant(zone).toLocalDate(),
                row.getBoolean(9),
                row.getString(10));
    }

    /**
     * Returns the events that no task was ever made for: one that was made is open, or was done or settled by a person.
     */
    public Map<UUID, List<CareEvent>> unansweredEvents(UnitRange range, ZoneId zone) throws SQLException {
        Map<UUID, List<CareEvent>> events = new HashMap<>();
        String sql = "select e.unit_id, e.id, e.kind, e.reported_at from care_event e"
                + UnitRange.WHERE_UNIT_OF.formatted("e.unit_id")
                + " and not exists (select 1 from care_task t where t.event_id = e.id)";
        try (PreparedStatement query = ranged(sql, range);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                Instant at = row.getObject(4, OffsetDateTime.class).toInstant();
                var event = new CareEvent(
                        row.getString(2),
                        RoofEventKind.valueOf(row.getString(3)).origin(),
                        at,
                        at.atZone(zone).toLocalDate());
                events.computeIfAbsent(row.getObject(1, UUID.class), none -> new ArrayList<>())
                        .add(event);
            }
        }
        return events;
    }

    /** Returns the questions that stand on open tasks of the units of a range, by task. */
    public Map<String, String> questions(UnitRange range) throws SQLException {
        Map<String, String> questions = new HashMap<>();
        String sql = "select t.id, t.question" + OF_RANGE
                + " and t.question is not null and t.state not in ('DONE', 'CALLED_OFF')";
        try (PreparedStatement query = ranged(sql, range);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                questions.put(row.getString(1), row.getString(2));
            }
        }
        return questions;
    }

    private PreparedStatement ranged(String sql, UnitRange range) throws SQLException {
        PreparedStatement query = database.prepareStatement(sql);
        query.setString(1, range.depot());
        query.setString(2, range.first());
        query.setString(3, range.last());
        return query;
    }
}
