package dev.lapwing.care.application;

import dev.lapwing.care.HoldReleased;
import dev.lapwing.care.ReleaseCheck;
import dev.lapwing.care.Signer;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Ends holds, once what caused them has been looked at and put right. */
@ApplicationScoped
public class ReleasingHolds {
    private static final int LONGEST_STATEMENT = 2000;

    @Inject
    ReleaseCheck check;

    @Inject
    Event<HoldReleased> released;

    @Inject
    Clock clock;

    /**
     * Releases a hold.
     *
     * @param by the name of the person who signs
     * @param statement what they state
     */
    @Transactional
    public Hold release(UUID id, Signer signer, String by, String statement) {
        var errors = new FieldErrors();
        checkWords(errors, by, 100, "by");
        checkWords(errors, statement, LONGEST_STATEMENT, "statement");
        errors.refuseIfAny();
        Hold hold = Hold.findById(id);
        if (hold == null) {
            throw Refused.notFound("hold " + id);
        }
        if (hold.state == HoldState.RELEASED) {
            throw Refused.conflict("The hold was released by " + hold.releasedBy);
        }
        if (hold.cause == HoldCause.QUESTION) {
            throw Refused.conflict("The desk has not answered whether the roof was touched");
        }
        List<String> missing = releaseIfGranted(hold, signer, by.strip(), statement.strip(), clock.instant());
        if (!missing.isEmpty()) {
            throw Refused.conflict("The hold stands: " + String.join("; ", missing));
        }
        return hold;
    }

    /** Releases an open hold if nothing is missing; returns what is. */
    @Transactional(Transactional.TxType.MANDATORY)
    public List<String> releaseIfGranted(Hold hold, Signer signer, String by, String statement, Instant at) {
        ReleaseCheck.Decision decision = check.decide(hold, signer, statement, at);
        if (decision.missing().isEmpty()) {
            hold.ground = decision.ground();
            end(hold, by, statement, at);
        }
        return decision.missing();
    }

    /** Ends a hold and tells of it. */
    @Transactional(Transactional.TxType.MANDATORY)
    void end(Hold hold, String by, String statement, Instant at) {
        hold.release(by, statement, at);
        released.fire(new HoldReleased(hold.id));
    }

    private static void checkWords(FieldErrors errors, String words, int most, String field) {
        if (errors.present(words, field)) {
            errors.atMost(words, most, field);
            errors.check(words.indexOf('\0') < 0, field, "holds a NUL character");
        }
    }
}
