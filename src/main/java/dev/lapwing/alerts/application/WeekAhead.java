package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.MailKind;
import dev.lapwing.alerts.domain.Urgency;
import dev.lapwing.alerts.storage.DigestDays;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;

/** Tells each tech and coordinator on Monday what is to be done at their depot until Sunday; nobody when nothing is. */
@ApplicationScoped
class WeekAhead {
    private static final int MOST_TASKS = 500;
    private static final int DAYS_TO_SUNDAY = 6;

    @Inject
    Outbox outbox;

    @Inject
    DigestLetters letters;

    /** Writes the mails of a depot once on each Monday there; on other days nothing. Needs a transaction. */
    void write(Depot depot, Instant now) {
        LocalDate today = depot.dateAt(now);
        if (today.getDayOfWeek() != DayOfWeek.MONDAY || !DigestDays.claimWeek(depot.code, today, now)) {
            return;
        }
        for (Role role : List.of(Role.TECH, Role.COORDINATOR)) {
            for (Staff reader : Staff.at(depot.code, role)) {
                List<CareTask> tasks = tasks(depot.code, today, role == Role.TECH ? reader.username : null);
                if (!tasks.isEmpty()) {
                    Letter letter = letters.weekly(reader, depot, tasks, now);
                    outbox.add(Reader.of(reader), MailKind.WEEK_AHEAD, Urgency.TODAY, letter);
                }
            }
        }
    }

    /** Returns what is due until Sunday, what is late included. */
    private static List<CareTask> tasks(String depot, LocalDate monday, String assignee) {
        var filter = new DueList.Filter(depot, null, monday.plusDays(DAYS_TO_SUNDAY), null, assignee, null);
        return DueList.after(filter, DueList.Place.START, MOST_TASKS);
    }
}
