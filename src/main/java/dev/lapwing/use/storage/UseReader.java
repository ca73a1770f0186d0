package dev.lapwing.use.storage;

import dev.lapwing.fleet.Storage;
import dev.lapwing.use.UnitRange;
import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.domain.LogSpan;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
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

/** Reads what bears on the use of the units of a range: one statement per kind of fact. */
final class UseReader {
    private static final LocalDate FOR_GOOD = LocalDate.of(9999, 12, 31);
    private static final String OF_RANGE = UnitRange.WHERE_UNIT_OF.formatted("x.unit_id");

    private final Connection database;
    private final UnitRange range;
    private final ZoneId zone;

    UseReader(Connection database, UnitRange range, ZoneId zone) {
        this.database = database;
        this.range = range;
        this.zone = zone;
    }

    /** Adds the rentals that end after the start of a day or have no end. */
    void addRentals(Map<UUID, List<LogSpan>> spans, LocalDate since) throws SQLException {
        String sql = "select x.unit_id, x.out_at, x.back_at from rental x" + OF_RANGE
                + " and (x.back_at is null or x.back_at > ?)";
        try (PreparedStatement query = since(sql, since);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                add(spans, row.getObject(1, UUID.class), new LogSpan(LogKind.RENTAL, instant(row, 2), instant(row, 3)));
            }
        }
    }

    /** Adds the stays in the same way, and returns where units are stored today, if a stay says so. */
    Map<UUID, Storage> addStays(Map<UUID, List<LogSpan>> spans, LocalDate since, LocalDate today) throws SQLException {
        Map<UUID, Storage> storedAt = new HashMap<>();
        String sql = "select x.unit_id, x.kind, x.from_at, x.until_at, x.place from stay x" + OF_RANGE
                + " and (x.until_at is null or x.until_at > ?)";
        try (PreparedStatement query = since(sql, since);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                UUID unit = row.getObject(1, UUID.class);
                var span = new LogSpan(LogKind.valueOf(row.getString(2)), instant(row, 3), instant(row, 4));
                add(spans, unit, span);
                String place = row.getString(5);
                if (place != null && span.days(zone).contains(today)) {
                    storedAt.put(unit, Storage.valueOf(place));
                }
            }
        }
        return storedAt;
    }

    /** Returns what the log last said of each unit. */
    Map<UUID, UseInForce> judgements() throws SQLException {
        Map<UUID, UseInForce> judgements = new HashMap<>();
        try (PreparedStatement query =
                        ranged("select x.unit_id, x.pattern, x.since, x.why from use_judgement x" + OF_RANGE);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                var judgement = new UseInForce(
                        UsePattern.valueOf(row.getString(2)), row.getObject(3, LocalDate.class), row.getString(4));
                judgements.put(row.getObject(1, UUID.class), judgement);
            }
        }
        return judgements;
    }

    /** Returns the patterns that are set or were set before. */
    Map<UUID, List<PatternOverride>> overrides() throws SQLException {
        Map<UUID, List<PatternOverride>> overrides = new HashMap<>();
        String set =
                "select x.unit_id, x.pattern, x.reason, x.set_by, x.set_until, x.set_at from use_pattern x" + OF_RANGE;
        try (PreparedStatement query = ranged(set);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                addOverride(overrides, row, instant(row, 6).atZone(zone).toLocalDate());
            }
        }
        String past = "select x.unit_id, x.pattern, x.reason, x.set_by, x.set_until, x.set_from from use_pattern_past x"
                + OF_RANGE;
        try (PreparedStatement query = ranged(past);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                addOverride(overrides, row, row.getObject(6, LocalDate.class));
            }
        }
        return overrides;
    }

    private static void addOverride(Map<UUID, List<PatternOverride>> overrides, ResultSet row, LocalDate from)
            throws SQLException {
        LocalDate until = row.getObject(5, LocalDate.class);
        LocalDate last = until == null ? FOR_GOOD : until;
        var override = new PatternOverride(
                UsePattern.valueOf(row.getString(2)),
                row.getString(3),
                row.getString(4),
                from.isAfter(last) ? last : from,
                last);
        overrides
                .computeIfAbsent(row.getObject(1, UUID.class), none -> new ArrayList<>())
                .add(override);
    }

    private static void add(Map<UUID, List<LogSpan>> spans, UUID unit, LogSpan span) {
        spans.computeIfAbsent(unit, none -> new ArrayList<>()).add(span);
    }

    private static Instant instant(ResultSet row, int column) throws SQLException {
        OffsetDateTime time = row.getObject(column, OffsetDateTime.class);
        return time == null ? null : time.toInstant();
    }

    private PreparedStatement since(String sql, LocalDate day) throws SQLException {
        PreparedStatement query = ranged(sql);
        query.setObject(4, day.atStartOfDay(zone).toOffsetDateTime());
        return query;
    }

    private PreparedStatement ranged(String sql) throws SQLException {
        PreparedStatement query = database.prepareStatement(sql);
        query.setString(1, range.depot());
        query.setString(2, range.first());
        query.setString(3, range.last());
        return query;
    }
}
