package dev.lapwing.audit;

import dev.lapwing.audit.storage.AuditEntry;
import dev.lapwing.platform.Ids;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;

/** Writes down changes in the transaction in which they happen: both are kept, or neither. */
@ApplicationScoped
public class AuditTrail {
    @Inject
    Ids ids;

    /**
     * Adds a change to the trail.
     *
     * @param who sign-in name of the person, or the name of the part of the service that did it
     */
    @Transactional(Transactional.TxType.MANDATORY)
    public void write(Audited change, String who, Instant at) {
        var entry = new AuditEntry();
        entry.id = ids.next();
        entry.unitId = change.unitId();
        entry.at = at;
        entry.who = who;
        entry.what = change.what();
        entry.area = change.area();
        entry.subject = change.subject();
        entry.was = change.was();
        entry.became = change.became();
        entry.persist();
    }
}
