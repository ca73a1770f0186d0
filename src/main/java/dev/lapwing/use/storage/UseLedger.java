package dev.lapwing.use.storage;

import dev.lapwing.fleet.Storage;
import dev.lapwing.use.UnitRange;
import dev.lapwing.use.UnitUse;
import dev.lapwing.use.domain.LogSpan;
import dev.lapwing.use.domain.PatternJudge;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.PatternThresholds;
import dev.lapwing.use.domain.RentalLog;
import dev.lapwing.use.domain.UseInForce;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Judges the use of many units with a fixed number of statements, and keeps what was judged. */
public final class UseLedger {
    private final Connection database;
    private final UseReader reader;
    private final ZoneId zone;
    private final LocalDate today;
    private final PatternThresholds thresholds;

    /**
     * @param database an open connection inside a transaction; the caller closes it
     * @param today the local day at the depot
     */
    public UseLedger(Connection database, UnitRange range, ZoneId zone, LocalDate today, PatternThresholds thresholds) {
        this.database = database;
        this.reader = new UseReader(database, range, zone);
        this.zone = zone;
        this.today = today;
        this.thresholds = thresholds;
    }

    /** Returns the use of the given units of the range. */
    public Map<UUID, UnitUse> judge(List<UUID> units) throws SQLException {
        Map<UUID, List<LogSpan>> spans = new HashMap<>();
        LocalDate reach = today.minusDays(thresholds.trailingDays() + 1L);
        reader.addRentals(spans, reach);
        Map<UUID, Storage> storedAt = reader.addStays(spans, reach, today);
        Map<UUID, UseInForce> before = reader.judgements();
        Map<UUID, List<PatternOverride>> overrides = reader.overrides();
        var judge = new PatternJudge(thresholds);
        Map<UUID, UnitUse> uses = new HashMap<>();
        Map<UUID, UseInForce> changed = new HashMap<>();
        for (UUID unit : units) {
            var log = new RentalLog(spans.getOrDefault(unit, List.of()), zone);
            UseInForce derived = judge.judge(log, today, before.get(unit));
            if (!derived.equals(before.get(unit))) {
                changed.put(unit, derived);
            }
            UseInForce inForce = PatternOverride.inForce(derived, overrides.getOrDefault(unit, List.of()), today);
            uses.put(unit, new UnitUse(inForce, log.rentals(), storedAt.get(unit)));
        }
        keep(changed, before.keySet());
        return uses;
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
}
