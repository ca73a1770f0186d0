package dev.lapwing.care.application;

import dev.lapwing.care.domain.Change;
import dev.lapwing.care.domain.NextDue;
import dev.lapwing.care.domain.Plan;
import dev.lapwing.care.domain.RuleTrial;
import dev.lapwing.care.domain.UnitFacts;
import dev.lapwing.care.storage.SweepReader.UnitKey;
import dev.lapwing.care.storage.TrialChange;
import dev.lapwing.care.storage.TrialRun;
import dev.lapwing.fleet.Depot;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.jboss.logging.Logger;

/** Puts a run of a depot's units through a trial, and keeps what would change. */
@ApplicationScoped
class TrialBatch {
    private static final Logger LOG = Logger.getLogger(TrialBatch.class);
    private static final int BATCH = 500;
    private static final int LONGEST_WHY = 1000;

    @Inject
    SweepBatch sweep;

    /** What would change for one unit of a depot. */
    record Line(
            String depot, String unit, LocalDate dueNow, LocalDate dueTried, int created, int calledOff, String why) {}

    /** Forgets what a trial that was cut off had listed. */
    TrialRun startAnew(TrialRun run) {
        TrialChange.delete("trialId", run.id);
        return run;
    }

    List<UnitKey> keysAfter(Depot depot, String number) throws SQLException {
        return sweep.keysAfter(depot, number, BATCH);
    }

    /** Tries units and adds a line for each that would change; returns how many could not be tried. */
    int tryUnits(RuleTrial trial, Depot depot, List<UnitKey> units, Instant now, List<Line> lines) {
        try {
            String before = units.get(0).number();
            String last = units.get(units.size() - 1).number();
            tryAll(trial, depot, sweep.factsBetween(depot, before, last, now), now, lines);
            return 0;
        } catch (SQLException | RuntimeException failure) {
            LOG.warnf(failure, "A batch of a trial goes unit by unit");
            return units.stream()
                    .mapToInt(unit -> tryAlone(trial, depot, unit, now, lines) ? 0 : 1)
                    .sum();
        }
    }

    private boolean tryAlone(RuleTrial trial, Depot depot, UnitKey unit, Instant now, List<Line> lines) {
        try {
            tryAll(trial, depot, sweep.factsBetween(depot, unit.number(), unit.number(), now), now, lines);
            return true;
        } catch (SQLException | RuntimeException failure) {
            LOG.errorf(failure, "Unit %s could not be tried", unit.number());
            String why = "could not be tried: " + failure.getMessage();
            lines.add(new Line(depot.code, unit.number(), null, null, 0, 0, why));
            return false;
        }
    }

    private static void tryAll(RuleTrial trial, Depot depot, List<UnitFacts> units, Instant now, List<Line> lines) {
        LocalDate today = depot.dateAt(now);
        for (UnitFacts facts : units) {
            trial.unit(facts, today).ifPresent(difference -> lines.add(line(depot, difference)));
        }
    }

    private static Line line(Depot depot, RuleTrial.Difference difference) {
        Plan tried = difference.tried();
        return new Line(
                depot.code,
                difference.unit(),
                due(difference.now().next()),
                due(tried.next()),
                count(tried, Change.Create.class),
                count(tried, Change.CallOff.class),
                tried.next() == null ? "no work planned" : tried.next().why());
    }

    private static LocalDate due(NextDue next) {
        return next == null ? null : next.window().due();
    }

    private static int count(Plan plan, Class<? extends Change> type) {
        return (int) plan.changes().stream().filter(type::isInstance).count();
    }

    /** Stores lines after those that are there, and the counts so far, in the running transaction. */
    void store(UUID trial, RuleTrial.Totals totals, int failed, List<Line> lines) {
        int position = Math.toIntExact(TrialChange.countOf(trial));
        for (Line line : lines) {
            var change = new TrialChange();
            change.trialId = trial;
            change.position = ++position;
            change.unit = line.unit();
            change.depot = line.depot();
            change.dueNow = line.dueNow();
            change.dueTried = line.dueTried();
            change.created = line.created();
            change.calledOff = line.calledOff();
            change.why =
                    line.why().length() <= LONGEST_WHY ? line.why() : line.why().substring(0, LONGEST_WHY);
            change.persist();
        }
        TrialRun.require(trial).take(totals, failed);
    }
}
