package dev.lapwing.care.application;

import dev.lapwing.care.HoldOpened;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.UUID;

/** Keeps a unit in the yard. */
@ApplicationScoped
public class OpeningHolds {
    @Inject
    Ids ids;

    @Inject
    Event<HoldOpened> opened;

    /**
     * Opens a hold.
     *
     * @param causeId the strike, question or task that caused it
     * @param words what happened, for people; at most 2,000 characters
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public Hold open(Unit unit, HoldCause cause, UUID causeId, String words, Instant at, String by) {
        var hold = new Hold();
        hold.id = ids.next();
        hold.unit = unit;
        hold.cause = cause;
        hold.causeId = causeId;
        hold.words = words;
        hold.state = HoldState.OPEN;
        hold.openedAt = at;
        hold.openedBy = by;
        hold.persist();
        opened.fire(new HoldOpened(hold.id));
        return hold;
    }
}
