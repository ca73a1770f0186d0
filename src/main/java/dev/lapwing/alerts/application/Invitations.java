package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.CalendarText;
import dev.lapwing.alerts.mail.MailBuilder;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.alerts.storage.OutboxMail;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.CareTask;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Adds to a mail the appointment in its reader's calendar (RFC 5546), or the withdrawal of one. */
@ApplicationScoped
class Invitations {
    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    MailBuilder builder;

    /** Returns the number of the next change to a task's appointment. */
    int nextSequence(CareTask task) {
        return OutboxList.lastCalendarSequence(task.id) + 1;
    }

    void attach(OutboxMail mail, Appointment.Method method, int sequence, CareTask task, Reader reader, Letter letter) {
        // calendars are shared and copied about: the link that needs no sign-in stays in the mail
        String page = publicUrl + "/tasks/" + task.id;
        var appointment = new Appointment(
                task.id + "@" + builder.domain(),
                sequence,
                method,
                mail.createdAt,
                when(task),
                letter.subject(),
                task.depot.name,
                letter.lead() + "\n" + page,
                page,
                builder.organizer(),
                new Appointment.Person(reader.name(), reader.mail()));
        mail.calendarPart = CalendarText.of(appointment);
        mail.calendarMethod = method;
        mail.calendarSequence = sequence;
    }

    static Appointment.When when(CareTask task) {
        return task.kind == TaskKind.STRIKE_INSPECTION
                ? Appointment.When.at(task.dueAt)
                : Appointment.When.on(task.due);
    }
}
