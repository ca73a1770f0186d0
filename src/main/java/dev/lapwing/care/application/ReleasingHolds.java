package dev.lapwing.care.application;

import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;

/** Ends holds, once what caused them has been looked at. */
@ApplicationScoped
public class ReleasingHolds {
    private static final int LONGEST_STATEMENT = 2000;

    @Inject
    Clock clock;

    /**
     * Releases a hold.
     *
     * @param by the person who signs
     * @param statement what they state
     */
    @Transactional
    public Hold release(UUID id, String by, String statement) {
        var errors = new FieldErrors();
        if (errors.present(by, "by")) {
            errors.atMost(by, 100, "by");
        }
        if (errors.present(statement, "statement")) {
            errors.atMost(statement, LONGEST_STATEMENT, "statement");
        }
        errors.refuseIfAny();
        Hold hold = Hold.findById(id);
        if (hold == null) {
            throw Refused.notFound("hold " + id);
        }
        if (hold.state == HoldState.RELEASED) {
            throw Refused.conflict("The hold was released by " + hold.releasedBy);
        }
        requireLookedAt(hold);
        hold.release(by.strip(), statement.strip(), clock.instant());
        return hold;
    }

    private static void requireLookedAt(Hold hold) {
        if (hold.cause == HoldCause.QUESTION) {
            throw Refused.conflict("The desk has not answered whether the roof was touched");
        }
        boolean inspected = CareTask.ofStrike(hold.causeId)
                .filter(task -> task.state == TaskState.DONE)
                .isPresent();
        if (!inspected) {
            throw Refused.conflict("The roof has not been inspected since; sign the inspection off first");
        }
    }
}
