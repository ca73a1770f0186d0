package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.FinishingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.domain.sheet.InspectionStart;
import dev.lapwing.jobs.domain.sheet.RoofReadiness;
import dev.lapwing.jobs.domain.sheet.SheetEvent;
import dev.lapwing.jobs.domain.sheet.SheetEventKind;
import dev.lapwing.jobs.domain.sheet.Weather;
import dev.lapwing.jobs.domain.surface.Cleaner;
import dev.lapwing.jobs.domain.surface.CleanerAnswer;
import dev.lapwing.jobs.storage.RecordedEvent;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.UUID;

/** Clearing, washing and drying, up to the moment from which the roof is looked at. */
@ApplicationScoped
public class ReadyingRoofs {
    private static final Duration LONGEST_AGO = Duration.ofDays(7);

    @Inject
    FinishingTasks tasks;

    @Inject
    SheetReference reference;

    @Inject
    DepotLists lists;

    @Inject
    SheetSettings settings;

    @Inject
    SheetLog log;

    @Inject
    Clock clock;

    /** What is said when looking is to begin; any part may be null. */
    public record Beginning(Boolean wet, Boolean windy, Boolean tooDirtyToSee, String reason) {}

    /** Notes the cleaner that is used. One that the surface does not bear is refused with the reason. */
    @Transactional
    public RecordedEvent useCleaner(UUID taskId, String name, String makerStatement, Signer by) {
        SheetWords.refuseLong(makerStatement, "makerStatement");
        CareTask task = tasks.underWay(taskId, by);
        return use(task, name, makerStatement, by, now());
    }

    /** Notes that the roof is too dirty to see: it is washed before anyone looks at it. */
    @Transactional
    public RecordedEvent tooDirty(UUID taskId, String words, Signer by) {
        SheetWords.refuseLong(words, "note");
        CareTask task = tasks.underWay(taskId, by);
        Instant now = now();
        var event = new SheetEvent(SheetEventKind.TOO_DIRTY, null, SheetWords.plain(words), now);
        return log.write(task, event, by, now);
    }

    /**
     * Notes the end of a wash; the drying clock runs from then.
     *
     * @param cleaner what it was washed with, or null for water alone
     * @param washedAt when it was finished, or null for now
     */
    @Transactional
    public RecordedEvent washed(UUID taskId, String cleaner, String makerStatement, Instant washedAt, Signer by) {
        Instant now = now();
        var errors = new FieldErrors();
        SheetWords.checkLong(errors, makerStatement, SheetWords.LONGEST, "makerStatement");
        Instant washed = washedAt == null ? now : washedAt.truncatedTo(ChronoUnit.MICROS);
        errors.check(!washed.isAfter(now), "washedAt", "is still to come");
        errors.check(!washed.isBefore(now.minus(LONGEST_AGO)), "washedAt", "is more than a week ago");
        errors.refuseIfAny();
        CareTask task = tasks.underWay(taskId, by);
        boolean plain = cleaner == null || cleaner.isBlank();
        if (!plain) {
            use(task, cleaner, makerStatement, by, now);
        }
        var event = new SheetEvent(SheetEventKind.WASHED, null, plain ? "with water alone" : "with " + cleaner, washed);
        return log.write(task, event, by, now);
    }

    /** Begins looking and feeling, or notes why nobody goes up; refuses while the roof is dirty or dries. */
    @Transactional
    public RecordedEvent begin(UUID taskId, Beginning beginning, Signer by) {
        var errors = new FieldErrors();
        errors.present(beginning.wet(), "wet");
        errors.present(beginning.windy(), "windy");
        SheetWords.checkLong(errors, beginning.reason(), SheetWords.LONGEST, "reason");
        errors.refuseIfAny();
        CareTask task = tasks.underWay(taskId, by);
        Instant now = now();
        var stop = new Weather(beginning.wet(), beginning.windy()).stop();
        if (stop.isPresent()) {
            return log.write(task, new SheetEvent(SheetEventKind.STOPPED, null, stop.get(), now), by, now);
        }
        if (Boolean.TRUE.equals(beginning.tooDirtyToSee())) {
            return log.write(task, new SheetEvent(SheetEventKind.TOO_DIRTY, null, "", now), by, now);
        }
        return log.write(task, begun(readiness(task), task, beginning.reason(), now), by, now);
    }

    private SheetEvent begun(RoofReadiness readiness, CareTask task, String reason, Instant now) {
        InspectionStart start = readiness.start(settings.dryingClock(), settings.washNeeded(task.kind), now, reason);
        if (start instanceof InspectionStart.WashFirst first) {
            throw Refused.conflict("The inspection waits: " + first.because());
        }
        if (start instanceof InspectionStart.TooEarly early) {
            throw Refused.conflict("The roof dries for " + early.missing().toMinutes()
                    + " more minutes; to begin early, give a reason");
        }
        if (start instanceof InspectionStart.Early early) {
            String words = early.reason() + "; " + early.missing().toMinutes() + " minutes of drying were left";
            return new SheetEvent(SheetEventKind.BEGUN_EARLY, null, words, now);
        }
        return new SheetEvent(SheetEventKind.BEGUN, null, "", now);
    }

    /** Returns how far the roof of a task is, as its sheet tells. */
    public RoofReadiness readiness(CareTask task) {
        return RoofReadiness.after(SheetLog.of(task.id));
    }

    /** Returns when the roof has had its drying time, or null while no wash is noted. */
    public Instant readyAt(RoofReadiness readiness) {
        return readiness.washedAt() == null
                ? null
                : readiness.washedAt().plus(settings.dryingClock().dryingTime());
    }

    /** Refuses what is to be done on the roof of a task while nobody can or may look at it. */
    void requireLooking(CareTask task, Instant now) {
        if (!task.kind.onTheRoof()) {
            throw Refused.conflict("Nobody goes up for this task: enter who confirmed the membrane system");
        }
        readiness(task)
                .forbidsLooking(settings.dryingClock(), settings.washNeeded(task.kind), now)
                .ifPresent(why -> {
                    throw Refused.conflict(why);
                });
    }

    private RecordedEvent use(CareTask task, String name, String makerStatement, Signer by, Instant now) {
        Cleaner cleaner = lists.cleaner(task.depot.code, name)
                .orElseThrow(() -> Refused.invalid("cleaner", "is not on the list of " + task.depot.name));
        CleanerAnswer answer =
                reference.cleanerRules().mayTouch(task.unit.roof.surface.word(), cleaner, makerStatement);
        if (answer instanceof CleanerAnswer.Refused refused) {
            throw Refused.invalid("cleaner", "must not touch this roof: " + String.join("; ", refused.reasons()));
        }
        String because = ((CleanerAnswer.Allowed) answer).because();
        return log.write(task, new SheetEvent(SheetEventKind.CLEANER, cleaner.name(), because, now), by, now);
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
