package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Appointment.Method;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.StrikeWorkOpened;
import dev.lapwing.care.TaskAssigned;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.List;
import org.jboss.logging.Logger;

/** Writes to people about strikes and assignments, in the transaction in which they happen. */
@ApplicationScoped
class TellingOfWork {
    private static final Logger LOG = Logger.getLogger(TellingOfWork.class);

    @Inject
    Outbox outbox;

    @Inject
    Letters letters;

    @Inject
    Invitations invitations;

    @Transactional(Transactional.TxType.MANDATORY)
    void strikeWorkOpened(@Observes StrikeWorkOpened event) {
        CareTask task = CareTask.require(event.taskId());
        Hold hold = Hold.findById(event.holdId());
        Staff tech = person(task.assignee);
        if (tech != null) {
            Letter letter = letters.strike(tech, task, hold);
            OutboxMail mail = outbox.add(tech, MailKind.STRIKE, Urgency.AT_ONCE, task, letter);
            invitations.attach(mail, Method.REQUEST, invitations.nextSequence(task), task, tech, letter);
        }
        List<Staff> coordinators = Staff.at(task.depot.code, Role.COORDINATOR);
        for (Staff coordinator : coordinators) {
            Letter letter = letters.held(coordinator, task, hold, tech);
            outbox.add(coordinator, MailKind.STRIKE, Urgency.AT_ONCE, task, letter);
        }
        if (coordinators.isEmpty()) {
            LOG.warnf("%s has no coordinator to tell of the strike on unit %s", task.depot.name, task.unit.number);
        }
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void taskAssigned(@Observes TaskAssigned event) {
        CareTask task = CareTask.require(event.taskId());
        Hold hold = task.strikeId == null ? null : Hold.ofCause(task.strikeId).orElse(null);
        Urgency urgency = task.kind == TaskKind.STRIKE_INSPECTION ? Urgency.AT_ONCE : Urgency.SOON;
        Staff giver = person(event.by());
        String by = giver == null ? event.by() : giver.fullName;
        Staff tech = person(event.tech());
        if (tech == null) {
            return;
        }
        int change = invitations.nextSequence(task);
        Letter yours = letters.assigned(tech, task, hold, by);
        OutboxMail invitation = outbox.add(tech, MailKind.ASSIGNMENT, urgency, task, yours);
        invitations.attach(invitation, Method.REQUEST, change, task, tech, yours);
        Staff before = person(event.before());
        if (before != null && !before.username.equals(tech.username)) {
            Letter notYours = letters.handedOver(before, task, tech, by);
            OutboxMail withdrawal = outbox.add(before, MailKind.HANDED_OVER, urgency, task, notYours);
            invitations.attach(withdrawal, Method.CANCEL, change, task, before, notYours);
        }
    }

    /** Returns the person, or null when nobody active has the name. */
    private static Staff person(String username) {
        return username == null ? null : Staff.activeByName(username).orElse(null);
    }
}
