package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Appointment.Method;
import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.StrikeWorkOpened;
import dev.lapwing.care.TaskAssigned;
import dev.lapwing.care.TaskCalledOff;
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
import java.util.stream.Collectors;
import java.util.stream.Stream;
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

    @Inject
    FirstRung firstRung;

    @Transactional(Transactional.TxType.MANDATORY)
    void strikeWorkOpened(@Observes StrikeWorkOpened event) {
        CareTask task = CareTask.require(event.taskId());
        Hold hold = Hold.findById(event.holdId());
        Staff tech = person(task.assignee);
        if (tech != null) {
            Reader reader = Reader.of(tech);
            Letter letter = letters.strike(reader, task, hold);
            OutboxMail mail = outbox.add(reader, MailKind.STRIKE, Urgency.AT_ONCE, task, letter);
            invitations.attach(mail, Method.REQUEST, invitations.nextSequence(task), task, reader, letter);
        }
        List<Staff> coordinators = Staff.at(task.depot.code, Role.COORDINATOR);
        for (Staff coordinator : coordinators) {
            Reader reader = Reader.of(coordinator);
            Letter letter = letters.held(reader, task, hold, tech == null ? null : tech.fullName);
            outbox.add(reader, MailKind.STRIKE, Urgency.AT_ONCE, task, letter);
        }
        firstRung.taken(task, told(tech, coordinators));
        if (coordinators.isEmpty()) {
            LOG.warnf("%s has no coordinator to tell of the strike on unit %s", task.depot.name, task.unit.number);
        }
    }

    @Transactional(Transactional.TxType.MANDATORY)
    void taskAssigned(@Observes TaskAssigned event) {
        CareTask task = CareTask.require(event.taskId());
        Hold hold = task.strikeId == null ? null : Hold.ofCause(task.strikeId).orElse(null);
        Urgency urgency = task.kind == TaskKind.STRIKE_INSPECTION ? Urgency.AT_ONCE : Urgency.SOON;
        Staff giving = person(event.by());
        String by = giving == null ? event.by() : giving.fullName;
        Staff tech = person(event.tech());
        if (tech == null) {
            return;
        }
        int change = invitations.nextSequence(task);
        Reader taker = Reader.of(tech);
        if (!event.tech().equals(event.by())) {
            Letter yours = letters.assigned(taker, task, hold, by);
            OutboxMail invitation = outbox.add(taker, MailKind.ASSIGNMENT, urgency, task, yours);
            invitations.attach(invitation, Method.REQUEST, change, task, taker, yours);
        }
        Staff before = person(event.before());
        if (before != null && !before.username.equals(tech.username)) {
            Reader giver = Reader.of(before);
            Letter notYours = letters.handedOver(giver, task, tech.fullName, by);
            OutboxMail withdrawal = outbox.add(giver, MailKind.HANDED_OVER, urgency, task, notYours);
            invitations.attach(withdrawal, Method.CANCEL, change, task, giver, notYours);
        }
        if (task.kind == TaskKind.STRIKE_INSPECTION) {
            firstRung.taken(task, tech.fullName);
        }
    }

    /** A tech who called it off knows; an appointment is withdrawn only where one was made. */
    @Transactional(Transactional.TxType.MANDATORY)
    void taskCalledOff(@Observes TaskCalledOff event) {
        Staff tech = person(event.tech());
        if (tech == null || event.tech().equals(event.by())) {
            return;
        }
        CareTask task = CareTask.require(event.taskId());
        Staff person = person(event.by());
        Reader reader = Reader.of(tech);
        Letter letter = letters.calledOff(reader, task, person == null ? event.by() : person.fullName, event.why());
        OutboxMail mail = outbox.add(reader, MailKind.CALLED_OFF, Urgency.SOON, task, letter);
        int change = invitations.nextSequence(task);
        if (change > 0) {
            invitations.attach(mail, Method.CANCEL, change, task, reader, letter);
        }
    }

    private static String told(Staff tech, List<Staff> coordinators) {
        return Stream.concat(Stream.ofNullable(tech), coordinators.stream())
                .map(staff -> staff.fullName)
                .distinct()
                .collect(Collectors.joining(", "));
    }

    /** Returns the person, or null when nobody active has the name. */
    private static Staff person(String username) {
        return username == null ? null : Staff.activeByName(username).orElse(null);
    }
}
