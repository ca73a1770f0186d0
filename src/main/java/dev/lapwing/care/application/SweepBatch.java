package dev.lapwing.care.application;

import dev.lapwing.care.domain.CareEvent;
import dev.lapwing.care.domain.Change;
import dev.lapwing.care.domain.DoneWork;
import dev.lapwing.care.domain.DueEngine;
import dev.lapwing.care.domain.OpenTask;
import dev.lapwing.care.domain.Plan;
import dev.lapwing.care.domain.UnitFacts;
import dev.lapwing.care.storage.SweepReader;
import dev.lapwing.care.storage.SweepReader.UnitKey;
import dev.lapwing.care.storage.SweepTally;
import dev.lapwing.care.storage.SweepWriter;
import dev.lapwing.care.storage.SweepWriter.UnitChange;
import dev.lapwing.care.storage.SweptUnit;
import dev.lapwing.fleet.Depot;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.UnitRange;
import dev.lapwing.use.UnitUse;
import dev.lapwing.use.domain.PatternThresholds;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.storage.UseLedger;
import io.agroal.api.AgroalDataSource;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Sweeps a run of a depot's units: reads their facts together, asks the engine for each, stores all changes together. */
@ApplicationScoped
class SweepBatch {
    private static final Logger LOG = Logger.getLogger(SweepBatch.class);

    /** Work older than this no longer bears on what is due; rules count at most a year back. */
    private static final int REMEMBERED_DAYS = 400;

    @Inject
    AgroalDataSource database;

    @Inject
    PatternThresholds thresholds;

    @Inject
    Ids ids;

    /**
     * What a batch did.
     *
     * @param last number of its last unit, or null when there was none left
     */
    record Outcome(String last, int units, int created, int calledOff, Map<String, String> failures) {}

    /** Sweeps up to {@code limit} units of a depot that follow a number, in a transaction of its own, and counts them. */
    @Transactional(value = Transactional.TxType.REQUIRES_NEW, rollbackOn = SQLException.class)
    Outcome after(UUID run, DueEngine engine, Depot depot, String number, int limit, Instant now) throws SQLException {
        try (Connection connection = database.getConnection()) {
            var reader = new SweepReader(connection);
            Outcome outcome = sweep(connection, engine, depot, reader.unitsAfter(depot.code, number, limit), now);
            count(connection, run, outcome);
            return outcome;
        }
    }

    /** Sweeps one unit of a run in a transaction of its own, and counts it. */
    @Transactional(value = Transactional.TxType.REQUIRES_NEW, rollbackOn = SQLException.class)
    void alone(UUID run, DueEngine engine, Depot depot, UUID unit, Instant now) throws SQLException {
        try (Connection connection = database.getConnection()) {
            count(connection, run, sweep(connection, engine, depot, new SweepReader(connection).unit(unit), now));
        }
    }

    /** Returns the units that {@link #after} would sweep. */
    @Transactional(value = Transactional.TxType.REQUIRES_NEW, rollbackOn = SQLException.class)
    List<UnitKey> keysAfter(Depot depot, String number, int limit) throws SQLException {
        try (Connection connection = database.getConnection()) {
            return new SweepReader(connection).keysAfter(depot.code, number, limit);
        }
    }

    /** Counts a unit of a run that could not be swept, with the reason. */
    @Transactional(value = Transactional.TxType.REQUIRES_NEW, rollbackOn = SQLException.class)
    void failed(UUID run, String number, String why) throws SQLException {
        try (Connection connection = database.getConnection()) {
            count(connection, run, new Outcome(number, 1, 0, 0, Map.of(number, why)));
        }
    }

    /** Sweeps one unit as part of the running transaction, so that it sees what was just written. */
    @Transactional(value = Transactional.TxType.MANDATORY, rollbackOn = SQLException.class)
    Outcome one(DueEngine engine, Depot depot, UUID unit, Instant now) throws SQLException {
        try (Connection connection = database.getConnection()) {
            return sweep(connection, engine, depot, new SweepReader(connection).unit(unit), now);
        }
    }

    /** Reads the facts of a depot's units from one number to another; nothing that reading them finds out is kept. */
    @Transactional(value = Transactional.TxType.REQUIRES_NEW, rollbackOn = SQLException.class)
    List<UnitFacts> factsBetween(Depot depot, String first, String last, Instant now) throws SQLException {
        try (Connection connection = database.getConnection()) {
            List<SweptUnit> units = new SweepReader(connection).unitsBetween(depot.code, first, last);
            QuarkusTransaction.setRollbackOnly();
            return units.isEmpty()
                    ? List.of()
                    : facts(connection, depot, new UnitRange(depot.code, first, last), units, now);
        }
    }

    private static void count(Connection connection, UUID run, Outcome outcome) throws SQLException {
        var tally = new SweepTally(connection);
        tally.add(run, outcome.units(), outcome.created(), outcome.calledOff());
        tally.fail(run, outcome.failures());
    }

    /** Sweeps units of a depot, in the order of their numbers, over an open connection inside a transaction. */
    Outcome sweep(Connection connection, DueEngine engine, Depot depot, List<SweptUnit> units, Instant now)
            throws SQLException {
        if (units.isEmpty()) {
            return new Outcome(null, 0, 0, 0, Map.of());
        }
        String last = units.get(units.size() - 1).number();
        var range = new UnitRange(depot.code, units.get(0).number(), last);
        var changes = new Changes();
        plan(engine, units, facts(connection, depot, range, units, now), depot.dateAt(now), changes);
        var writer = new SweepWriter(connection, ids, now, depot.code, depot.zoneId());
        int calledOff = writer.callOff(changes.callOffs);
        int created = writer.create(changes.creations);
        writer.ask(changes.newQuestions(new SweepReader(connection).questions(range)));
        return new Outcome(last, units.size(), created, calledOff, changes.failures);
    }

    private List<UnitFacts> facts(
            Connection connection, Depot depot, UnitRange range, List<SweptUnit> units, Instant now)
            throws SQLException {
        var reader = new SweepReader(connection);
        LocalDate today = depot.dateAt(now);
        Map<UUID, UnitUse> uses = new UseLedger(connection, range, depot.zoneId(), today, thresholds)
                .judge(units.stream().map(SweptUnit::id).toList());
        Map<UUID, List<DoneWork>> done = reader.doneSince(range, today.minusDays(REMEMBERED_DAYS));
        Map<UUID, List<OpenTask>> open = reader.open(range, depot.zoneId());
        Map<UUID, List<CareEvent>> events = reader.unansweredEvents(range, depot.zoneId());
        Season ofDepot = new Season(depot.opens(), depot.closes());
        List<UnitFacts> facts = new ArrayList<>(units.size());
        for (SweptUnit unit : units) {
            UnitUse use = uses.get(unit.id());
            facts.add(new UnitFacts(
                    unit.number(),
                    unit.roofStoredAt(use.storedAt()),
                    unit.service(),
                    use.inForce(),
                    depot.zoneId(),
                    Season.inForce(unit.ownSeason(), ofDepot),
                    unit.seasonSince(),
                    use.rentals(),
                    done.getOrDefault(unit.id(), List.of()),
                    open.getOrDefault(unit.id(), List.of()),
                    events.getOrDefault(unit.id(), List.of())));
        }
        return facts;
    }

    private static void plan(
            DueEngine engine, List<SweptUnit> units, List<UnitFacts> facts, LocalDate today, Changes changes) {
        for (int i = 0; i < units.size(); i++) {
            SweptUnit unit = units.get(i);
            try {
                Plan plan = engine.plan(facts.get(i), today);
                plan.changes().forEach(change -> changes.add(unit, change));
                if (plan.withoutSchedule()) {
                    changes.failures.put(unit.number(), "is in service and has no next date");
                }
            } catch (RuntimeException failure) {
                LOG.errorf(failure, "Unit %s could not be swept", unit.number());
                changes.failures.put(unit.number(), "could not be swept: " + failure.getMessage());
            }
        }
    }

    /** What is to be stored, gathered over the units of a batch. */
    private static final class Changes {
        private final List<UnitChange<Change.CallOff>> callOffs = new ArrayList<>();
        private final List<UnitChange<Change.Create>> creations = new ArrayList<>();
        private final Map<String, String> questions = new HashMap<>();
        private final Map<String, String> failures = new HashMap<>();

        void add(SweptUnit unit, Change change) {
            if (change instanceof Change.CallOff callOff) {
                callOffs.add(new UnitChange<>(unit, callOff));
            } else if (change instanceof Change.Create create) {
                creations.add(new UnitChange<>(unit, create));
            } else if (change instanceof Change.Ask ask) {
                questions.put(ask.task(), ask.question());
            }
        }

        /** Returns the questions that are not those that stand, with null for one that no longer does. */
        Map<String, String> newQuestions(Map<String, String> standing) {
            Map<String, String> news = new HashMap<>(questions);
            standing.keySet().forEach(task -> news.putIfAbsent(task, null));
            news.entrySet().removeIf(one -> Objects.equals(one.getValue(), standing.get(one.getKey())));
            return news;
        }
    }
}
