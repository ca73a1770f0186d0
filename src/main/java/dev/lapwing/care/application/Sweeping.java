package dev.lapwing.care.application;

import dev.lapwing.care.domain.DueEngine;
import dev.lapwing.care.storage.SweepReader.UnitKey;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.Ids;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;

/**
 * Brings the planned work of all units up to date. Sweeping twice changes nothing. Units go in batches; when a batch
 * fails its units go one by one, so that only the bad one stays behind, and is reported.
 */
@ApplicationScoped
public class Sweeping {
    private static final Logger LOG = Logger.getLogger(Sweeping.class);
    private static final int BATCH = 500;
    private static final String BEFORE_ALL = "";
    private static final String CUT_OFF = "cut off: the service stopped before the end; the sweep was run again";

    @ConfigProperty(name = "lapwing.sweep.keep", defaultValue = "90d")
    Duration keep;

    @Inject
    SweepBatch batch;

    @Inject
    Rulebook rulebook;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Writes down a sweep that is about to run; a null depot means all. */
    public SweepRun begin(String depotCode, SweepRun.Cause cause, String by) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            var run = new SweepRun();
            run.id = ids.next();
            run.depotCode = depotCode;
            run.cause = cause;
            run.state = SweepRun.State.RUNNING;
            run.askedBy = by;
            run.startedAt = clock.instant();
            run.persist();
            return run;
        });
    }

    /** Ends the nightly runs of a depot that never came to their end: only one runs at a time, so they were cut off. */
    void endCutOff(String depotCode) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew()
                .run(() -> SweepRun.nightlyRunning(depotCode)
                        .forEach(run -> run.end(SweepRun.State.FAILED, CUT_OFF, now)));
    }

    /** Runs a sweep to its end, and writes down how far it is with each batch. */
    public void run(UUID runId) {
        try {
            DueEngine engine = rulebook.engine();
            List<Depot> depots = QuarkusTransaction.requiringNew().call(() -> start(SweepRun.require(runId)));
            for (Depot depot : depots) {
                sweep(depot, engine, runId);
            }
            finish(runId, SweepRun.State.DONE, null);
        } catch (SQLException | RuntimeException failure) {
            LOG.errorf(failure, "Sweep %s failed", runId);
            finish(runId, SweepRun.State.FAILED, String.valueOf(failure.getMessage()));
        }
    }

    private static List<Depot> start(SweepRun run) {
        long units = run.depotCode == null ? Unit.count() : Unit.count("depot.code", run.depotCode);
        run.startWith(Math.toIntExact(units));
        return run.depotCode == null ? Depot.byName() : List.of(Depot.findById(run.depotCode));
    }

    private void sweep(Depot depot, DueEngine engine, UUID runId) throws SQLException {
        String last = BEFORE_ALL;
        while (last != null) {
            last = batchAfter(last, depot, engine, runId);
        }
    }

    /** Sweeps the batch that follows a number and returns the number of its last unit, or null at the end. */
    private String batchAfter(String number, Depot depot, DueEngine engine, UUID runId) throws SQLException {
        Instant now = clock.instant();
        try {
            return batch.after(runId, engine, depot, number, BATCH, now).last();
        } catch (SQLException | RuntimeException failure) {
            LOG.warnf(failure, "A batch of sweep %s goes unit by unit", runId);
            return unitByUnit(number, depot, engine, runId, now);
        }
    }

    private String unitByUnit(String number, Depot depot, DueEngine engine, UUID runId, Instant now)
            throws SQLException {
        String last = null;
        for (UnitKey unit : batch.keysAfter(depot, number, BATCH)) {
            last = unit.number();
            try {
                batch.alone(runId, engine, depot, unit.id(), now);
            } catch (SQLException | RuntimeException failure) {
                LOG.errorf(failure, "Unit %s could not be swept", unit.number());
                batch.failed(runId, unit.number(), "could not be swept: " + failure.getMessage());
            }
        }
        return last;
    }

    private void finish(UUID runId, SweepRun.State state, String error) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> {
            SweepRun.require(runId).end(state, error, now);
            SweepRun.forgetBefore(now.minus(keep));
        });
    }

    /** Plans the work of a unit as soon as it is known, so that nobody has to wait for the night. */
    void unitSaved(@Observes UnitSaved saved) throws SQLException {
        Unit unit = Unit.findById(saved.unitId());
        Unit.flush();
        batch.one(rulebook.engine(), unit.depot, unit.id, saved.at());
    }
}
