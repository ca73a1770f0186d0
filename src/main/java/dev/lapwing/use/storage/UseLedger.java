package dev.lapwing.use.storage;

import dev.lapwing.use.UnitRange;
import dev.lapwing.use.UnitUse;
import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.domain.LogSpan;
import dev.lapwing.use.domain.PatternJudge;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.PatternThresholds;
import dev.lapwing.use.domain.RentalLog;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Judges the use of many units with a fixed number of statements, and keeps what was judged. */
public final class UseLedger {
    private static final LocalDate FOR_GOOD = LocalDate.of(9999, 12, 31);
    private static final String OF_RANGE = UnitRange.WHERE_UNIT_OF.formatted("x.unit_id");

    private final Connection database;
    private final UnitRange range;
    private final ZoneId zone;
    private final LocalDate today;
    private final PatternThresholds thresholds;

    /**
     * @param database an open connection inside a transaction; the caller closes it
     * @param today the local day at the depot
     */
    public UseLedger(Connection database, UnitRange range, ZoneId zone, LocalDate today, PatternThresholds thresholds) {
        this.database = database;
        this.range = range;
        this.zone = zone;
        this.today = today;
        this.thresholds = thresholds;
    }

    /** Returns the use of the given units of the range. */
    public Map<UUID, UnitUse> judge(List<UUID> units) throws SQLException {
        Map<UUID, List<LogSpan>> spans = spans();
        Map<UUID, UseInForce> before = judgements();
        Map<UUID, PatternOverride> overrides = overrides();
        var judge = new PatternJudge(thresholds);
        Map<UUID, UnitUse> uses = new HashMap<>();
        Map<UUID, UseInForce> changed = new HashMap<>();
        for (UUID unit : units) {
            var log = new RentalLog(spans.getOrDefault(unit, List.of()), zone);
            UseInForce derived = judge.judge(log, today, before.get(unit));
            if (!derived.equals(before.get(unit))) {
                changed.put(unit, derived);
            }
            PatternOverride override = overrides.get(unit);
            List<PatternOverride> set = override == null ? List.of() : List.of(override);
            uses.put(unit, new UnitUse(PatternOverride.inForce(derived, set, today), log.rentals()));
        }
        keep(changed, before.keySet());
        return uses;
    }

    private Map<UUID, List<LogSpan>> spans() throws SQLException {
        Map<UUID, List<LogSpan>> spans = new HashMap<>();
        String sql = "select x.unit_id, x.out_at, x.back_at from rental x" + OF_RANGE
                + " and (x.back_at is null or x.back_at > ?)";
        try (PreparedStatement query = ranged(sql)) {
            LocalDate reach = today.minusDays(thresholds.trailingDays() + 1L);
            query.setObject(4, reach.atStartOfDay(zone).toOffsetDateTime());
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    var out = row.getObject(2, OffsetDateTime.class).toInstant();
                    var back = row.getObject(3, OffsetDateTime.class);
                    spans.computeIfAbsent(row.getObject(1, UUID.class), none -> new ArrayList<>())
                            .add(new LogSpan(LogKind.RENTAL, out, back == null ? null : back.toInstant()));
                }
            }
        }
        return spans;
    }

    private Map<UUID, UseInForce> judgements() throws SQLException {
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

    private Map<UUID, PatternOverride> overrides() throws SQLException {
        Map<UUID, PatternOverride> overrides = new HashMap<>();
        String sql =
                "select x.unit_id, x.pattern, x.reason, x.set_by, x.set_at, x.set_until from use_pattern x" + OF_RANGE;
        try (PreparedStatement query = ranged(sql);
                ResultSet row = query.executeQuery()) {
            while (row.next()) {
                LocalDate from = row.getObject(5, OffsetDateTime.class)
                        .atZoneSameInstant(zone)
                        .toLocalDate();
                LocalDate until = row.getObject(6, LocalDate.class);
                LocalDate last = until == null ? FOR_GOOD : until;
                var override = new PatternOverride(
                        UsePattern.valueOf(row.getString(2)),
                        row.getString(3),
                        row.getString(4),
                        from.isAfter(last) ? last : from,
                        last);
                overrides.put(row.getObject(1, UUID.class), override);
            }
        }
        return overrides;
    }

    private void keep(Map<UUID, UseInForce> changed, Set<UUID> judgedBefore) throws SQLException {
        if (changed.isEmpty()) {
            return;
        }
        try (PreparedStatement update = database.prepareStatement(
                        "update use_judgement set pattern = ?, since = ?, why = ?, judged_on = ? where unit_id = ?");
                PreparedStatement insert = database.prepareStatement(
                        "insert into use_judgement (pattern, since, why, judged_on, unit_id) values (?, ?, ?, ?, ?)")) {
            for (var entry : changed.entrySet()) {
                PreparedStatement statement = judgedBefore.contains(entry.getKey()) ? update : insert;
                statement.setString(1, entry.getValue().pattern().name());
                statement.setObject(2, entry.getValue().since());
                statement.setString(3, entry.getValue().why());
                statement.setObject(4, today);
                statement.setObject(5, entry.getKey());
                statement.addBatch();
            }
            update.executeBatch();
            insert.executeBatch();
        }
    }

    private PreparedStatement ranged(String sql) throws SQLException {
        PreparedStatement query = database.prepareStatement(sql);
        query.setString(1, range.depot());
        query.setString(2, range.first());
        query.setString(3, range.last());
        return query;
    }
}
