package dev.lapwing.care.application;

import dev.lapwing.care.storage.RulesEdition;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.care.storage.TrialRun;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;
import org.quartz.SchedulerException;

/** Takes rules into force that were tried before, and has the fleet's work brought in line with them. */
@ApplicationScoped
public class AdoptingRules {
    private static final int LONGEST_REASON = 500;

    /** The new edition, and the sweep that brings work in line with it. */
    public record Adopted(int edition, UUID sweep) {}

    @Inject
    TryingRules trying;

    @Inject
    Rulebook rulebook;

    @Inject
    SweepTimetable timetable;

    @Inject
    Clock clock;

    /** Adopts the rules of a trial that is done, if the rules in force are still those it was tried against. */
    @Transactional
    public Adopted adopt(UUID trialId, String reason, String by) throws SchedulerException {
        var errors = new FieldErrors();
        if (errors.present(reason, "reason")) {
            errors.atMost(reason.strip(), LONGEST_REASON, "reason");
        }
        errors.refuseIfAny();
        TrialRun trial = TrialRun.require(trialId);
        if (trial.state != SweepRun.State.DONE) {
            throw Refused.conflict(
                    "The trial is " + trial.state.word() + "; only rules whose trial is done are adopted");
        }
        trying.checked(trial.content);
        if (rulebook.inForce().number() != trial.against || !keep(trial, reason.strip(), by)) {
            throw Refused.conflict("Other rules were adopted since the trial; try these against them first");
        }
        UUID sweep = timetable.ask(null, SweepRun.Cause.RULES, by).id;
        return new Adopted(trial.against + 1, sweep);
    }

    private boolean keep(TrialRun trial, String reason, String by) {
        var edition = new RulesEdition();
        edition.number = trial.against + 1;
        edition.content = trial.content;
        edition.fromFile = false;
        edition.adoptedAt = clock.instant();
        edition.adoptedBy = by;
        edition.reason = reason;
        return edition.keep();
    }
}
