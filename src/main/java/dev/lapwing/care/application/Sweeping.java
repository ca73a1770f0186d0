package dev.lapwing.care.application;

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
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Brings the planned work of all units up to date. Sweeping twice changes nothing. */
@ApplicationScoped
public class Sweeping {
    private static final Logger LOG = Logger.getLogger(Sweeping.class);
    private static final int BATCH = 500;
    private static final String BEFORE_ALL = "";

    @Inject
    SweepBatch batch;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Writes down a sweep that is about to run; a null depot means all. */
    public SweepRun begin(String depotCode, String by) {
        return QuarkusTransaction.joiningExisting().call(() -> {
            var run = new SweepRun();
            run.id = ids.next();
            run.depotCode = depotCode;
            run.state = SweepRun.State.RUNNING;
            run.askedBy = by;
            run.startedAt = clock.instant();
            run.persist();
            return run;
        });
    }

    /** Runs a sweep to its end, and writes down how far it is after each batch. */
    public void run(UUID runId) {
        try {
            List<Depot> depots = QuarkusTransaction.requiringNew().call(() -> depotsOf(SweepRun.require(runId)));
            for (Depot depot : depots) {
                sweep(depot, runId);
            }
            finish(runId, SweepRun.State.DONE, null);
        } catch (SQLException | RuntimeException failure) {
            LOG.errorf(failure, "Sweep %s failed", runId);
            finish(runId, SweepRun.State.FAILED, String.valueOf(failure.getMessage()));
        }
    }

    private void sweep(Depot depot, UUID runId) throws SQLException {
        String last = BEFORE_ALL;
        while (last != null) {
            SweepBatch.Outcome outcome = batch.after(depot, last, BATCH, clock.instant());
            QuarkusTransaction.requiringNew().run(() -> add(SweepRun.require(runId), outcome));
            last = outcome.last();
        }
    }

    private static void add(SweepRun run, SweepBatch.Outcome outcome) {
        run.units += outcome.units();
        run.created += outcome.created();
        run.calledOff += outcome.calledOff();
        run.failures.putAll(outcome.failures());
    }

    private static List<Depot> depotsOf(SweepRun run) {
        return run.depotCode == null ? Depot.byName() : List.of(Depot.findById(run.depotCode));
    }

    private void finish(UUID runId, SweepRun.State state, String error) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> {
            SweepRun run = SweepRun.require(runId);
            run.state = state;
            run.error = error;
            run.finishedAt = now;
        });
    }

    /** Plans the work of a unit as soon as it is known, so that nobody has to wait for the night. */
    void unitSaved(@Observes UnitSaved saved) throws SQLException {
        Unit unit = Unit.findById(saved.unitId());
        Unit.flush();
        batch.one(unit.depot, unit.id, saved.at());
    }
}
