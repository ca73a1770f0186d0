package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.care.RoofReferred;
import dev.lapwing.care.UnitReleased;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import org.jboss.logging.Logger;

/** Writes to people about units that were referred to a workshop or released, in the transaction in which it happens. */
@ApplicationScoped
class TellingOfRoofs {
    private static final Logger LOG = Logger.getLogger(TellingOfRoofs.class);

    @Inject
    Outbox outbox;

    @Inject
    RoofLetters letters;

    @Inject
    PersonNames names;

    @Inject
    Callees callees;

    @Transactional(Transactional.TxType.MANDATORY)
    void roofReferred(@Observes RoofReferred event) {
        CareTask task = CareTask.require(event.taskId());
        List<Staff> coordinators = Staff.at(task.depot.code, Role.COORDINATOR);
        for (Staff coordinator : coordinators) {
            Reader reader = Reader.of(coordinator);
            Letter letter = letters.referred(reader, task, names.of(event.by()), event.why());
            outbox.add(reader, MailKind.REFERRED, Urgency.AT_ONCE, task, letter);
        }
        if (coordinators.isEmpty()) {
            LOG.warnf("%s has no coordinator to tell that unit %s was referred", task.depot.name, task.unit.number);
        }
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void unitReleased(@Observes UnitReleased event) {
        Hold hold = Hold.findById(event.holdId());
        for (Reader reader : callees.desk(hold.unit.depot).toList()) {
            outbox.add(reader, MailKind.RELEASED, Urgency.SOON, letters.released(reader, hold));
        }
    }
}
