package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Appointment;
import dev.lapwing.alerts.domain.CalendarText;
import dev.lapwing.alerts.mail.MailBuilder;
import dev.lapwing.alerts.storage.CalendarFeed;
import dev.lapwing.alerts.storage.OutboxList;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.fleet.Depot;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Makes, revokes and reads calendars of open work that calendar programs fetch by a private address. */
@ApplicationScoped
public class CalendarFeeds {
    private static final int MOST_TASKS = 500;

    /** A new feed and the address that is shown this once. */
    public record Made(CalendarFeed feed, String address) {}

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    MailBuilder builder;

    @Inject
    Secrets secrets;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Makes a feed of a tech's or a depot's work; exactly one of them is given. */
    @Transactional
    public Made make(String tech, String depot, String by) {
        check(tech, depot);
        String token = secrets.newToken();
        var feed = new CalendarFeed();
        feed.id = ids.next();
        feed.tokenHash = Secrets.hash(token);
        feed.tech = tech;
        feed.depotCode = depot;
        feed.madeAt = clock.instant();
        feed.madeBy = by;
        feed.persist();
        return new Made(feed, publicUrl + "/api/calendar/" + token + ".ics");
    }

    private static void check(String tech, String depot) {
        var errors = new FieldErrors();
        errors.check((tech == null) != (depot == null), "tech", "or depot must be given, not both");
        if (tech != null) {
            boolean known = Staff.activeByName(tech)
                    .filter(staff -> staff.role == Role.TECH)
                    .isPresent();
            errors.check(known, "tech", "is not the sign-in name of a tech");
        }
        if (depot != null) {
            errors.check(Depot.findById(depot) != null, "depot", "is not the code of a depot");
        }
        errors.refuseIfAny();
    }

    /** Ends a feed: its address finds nothing any more. Ending it again changes nothing. */
    @Transactional
    public void revoke(CalendarFeed feed) {
        CalendarFeed stored = CalendarFeed.require(feed.id);
        stored.revokedAt = stored.revokedAt == null ? clock.instant() : stored.revokedAt;
    }

    /** Returns the calendar behind an address, or refuses with "not found". */
    @Transactional
    public String read(String token) {
        CalendarFeed feed = CalendarFeed.inForce(Secrets.hash(token))
                .orElseThrow(() -> Refused.notFound("calendar with this address"));
        var filter = new DueList.Filter(feed.depotCode, null, null, null, feed.tech, null);
        Instant now = clock.instant();
        List<Appointment> appointments = DueList.after(filter, DueList.Place.START, MOST_TASKS).stream()
                .map(task -> appointment(task, now))
                .toList();
        return CalendarText.feed(title(feed), appointments);
    }

    private static String title(CalendarFeed feed) {
        return feed.tech == null
                ? Depot.<Depot>findById(feed.depotCode).name
                : Staff.<Staff>findById(feed.tech).fullName;
    }

    private Appointment appointment(CareTask task, Instant now) {
        UUID id = task.id;
        return new Appointment(
                id + "@" + builder.domain(),
                Math.max(0, OutboxList.lastCalendarSequence(id)),
                Appointment.Method.REQUEST,
                now,
                Invitations.when(task),
                task.unit.number + ": " + task.kind.label(),
                task.depot.name,
                task.why,
                publicUrl + "/tasks/" + id,
                builder.organizer(),
                null);
    }
}
