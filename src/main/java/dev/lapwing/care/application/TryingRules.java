package dev.lapwing.care.application;

import dev.lapwing.care.domain.BadRules;
import dev.lapwing.care.domain.CareRules;
import dev.lapwing.care.domain.RuleTrial;
import dev.lapwing.care.storage.SweepReader.UnitKey;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.care.storage.TrialRun;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.quartz.JobBuilder;
import org.quartz.JobDetail;
import org.quartz.Scheduler;
import org.quartz.SchedulerException;
import org.quartz.TriggerBuilder;

/** Tries other care rules on the whole fleet, in the background, and lists what would change. Nothing of it is done. */
@ApplicationScoped
public class TryingRules {
    private static final Logger LOG = Logger.getLogger(TryingRules.class);
    private static final int LONGEST_CONTENT = 200_000;
    private static final String FILE = "rules";

    @ConfigProperty(name = "lapwing.care.keep-trials", defaultValue = "30d")
    Duration keep;

    @Inject
    Rulebook rulebook;

    @Inject
    TrialBatch batch;

    @Inject
    Scheduler scheduler;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Reads rules that are to be tried or adopted; refuses bad ones, naming every problem with its line. */
    public CareRules checked(String content) {
        if (content == null || content.isBlank()) {
            throw Refused.invalid(FILE, "is required");
        }
        if (content.length() > LONGEST_CONTENT) {
            throw Refused.invalid(FILE, "is longer than " + LONGEST_CONTENT + " characters");
        }
        try {
            CareRules rules = rulebook.read(content);
            List<String> objections = rulebook.objections(rules);
            if (!objections.isEmpty()) {
                throw Refused.invalid(objections.stream()
                        .map(what -> new FieldError(FILE, what))
                        .toList());
            }
            return rules;
        } catch (BadRules bad) {
            throw Refused.invalid(bad.found().stream()
                    .map(problem -> new FieldError(
                            problem.where(),
                            problem.message() + (problem.line() == 0 ? "" : " (line " + problem.line() + ")")))
                    .toList());
        }
    }

    /** Starts a trial and returns it at once. */
    @Transactional
    public TrialRun ask(String content, String by) throws SchedulerException {
        checked(content);
        var run = new TrialRun();
        run.id = ids.next();
        run.state = SweepRun.State.RUNNING;
        run.content = content;
        run.against = rulebook.inForce().number();
        run.askedBy = by;
        run.askedAt = clock.instant();
        run.unitsInAll = Math.toIntExact(Unit.count());
        run.persistAndFlush();
        TrialRun.forgetBefore(clock.instant().minus(keep));
        JobDetail job = JobBuilder.newJob(TrialJob.class)
                .withIdentity("trial " + run.id, "rules")
                .usingJobData(TrialJob.RUN, run.id.toString())
                .requestRecovery()
                .build();
        scheduler.scheduleJob(job, TriggerBuilder.newTrigger().startNow().build());
        return run;
    }

    /** Runs a trial to its end, and writes down how far it is after each batch. */
    void run(UUID id) {
        try {
            TrialRun run = QuarkusTransaction.requiringNew().call(() -> batch.startAnew(TrialRun.require(id)));
            var trial = new RuleTrial(rulebook.inForce().rules(), rulebook.read(run.content));
            int failed = 0;
            for (Depot depot : QuarkusTransaction.requiringNew().call(Depot::byName)) {
                failed += tryDepot(id, trial, depot, failed);
            }
            end(id, SweepRun.State.DONE, null);
        } catch (SQLException | RuntimeException failure) {
            LOG.errorf(failure, "Trial %s failed", id);
            end(id, SweepRun.State.FAILED, String.valueOf(failure.getMessage()));
        }
    }

    /** Tries the units of a depot and returns how many of them could not be tried. */
    private int tryDepot(UUID id, RuleTrial trial, Depot depot, int failedBefore) throws SQLException {
        int failed = 0;
        Instant now = clock.instant();
        List<UnitKey> units = batch.keysAfter(depot, "");
        while (!units.isEmpty()) {
            List<TrialBatch.Line> lines = new ArrayList<>();
            failed += batch.tryUnits(trial, depot, units, now, lines);
            int couldNot = failedBefore + failed;
            QuarkusTransaction.requiringNew().run(() -> batch.store(id, trial.totals(), couldNot, lines));
            units = batch.keysAfter(depot, units.get(units.size() - 1).number());
        }
        return failed;
    }

    private void end(UUID id, SweepRun.State state, String error) {
        Instant now = clock.instant();
        QuarkusTransaction.requiringNew().run(() -> TrialRun.require(id).end(state, error, now));
    }
}
