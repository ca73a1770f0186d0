package dev.lapwing.care.application;

import dev.lapwing.care.domain.RoofEventKind;
import dev.lapwing.care.storage.RoofEvent;
import dev.lapwing.fleet.ServiceState;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;

/** Takes down what happened to a roof, and has the work planned that the rules ask for. */
@ApplicationScoped
public class ReportingEvents {
    private static final int LONGEST_NOTE = 2000;
    private static final int LONGEST_NAME = 100;
    private static final Duration LONGEST_AGO = Duration.ofDays(3 * 365);

    /**
     * An event as it is sent.
     *
     * @param kind water inside, storm, part lost
     * @param seenAt when it happened or was noticed
     * @param by who noticed it, or null for the person who enters it
     */
    public record Sighting(String kind, OffsetDateTime seenAt, String note, String by) {}

    @Inject
    Event<UnitSaved> saved;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Stores the event; its inspection is planned in the same transaction. */
    @Transactional
    public RoofEvent report(String number, Sighting sighting, String signedIn) {
        Unit unit = Unit.require(number);
        Instant now = clock.instant();
        RoofEventKind kind = check(sighting, now);
        if (unit.serviceState(unit.depot.dateAt(now)) == ServiceState.SOLD) {
            throw Refused.conflict("The unit was sold; nothing is planned for it any more");
        }
        var event = new RoofEvent();
        event.id = ids.next();
        event.unit = unit;
        event.kind = kind;
        event.seenAt = sighting.seenAt().toInstant();
        event.note = sighting.note().strip();
        event.reportedBy = sighting.by() == null || sighting.by().isBlank()
                ? signedIn
                : sighting.by().strip();
        event.reportedAt = now;
        event.enteredBy = signedIn;
        event.persistAndFlush();
        saved.fire(UnitSaved.withoutPattern(unit.id, now, signedIn));
        return event;
    }

    private static RoofEventKind check(Sighting sighting, Instant now) {
        var errors = new FieldErrors();
        errors.present(sighting.kind(), "kind");
        RoofEventKind kind =
                errors.word(RoofEventKind.class, sighting.kind(), "kind").orElse(null);
        if (errors.present(sighting.seenAt(), "seenAt")) {
            Instant seen = sighting.seenAt().toInstant();
            errors.check(!seen.isAfter(now), "seenAt", "lies in the future");
            errors.check(seen.isAfter(now.minus(LONGEST_AGO)), "seenAt", "lies more than three years ago");
        }
        if (errors.present(sighting.note(), "note")) {
            words(sighting.note(), LONGEST_NOTE, "note", errors);
        }
        words(sighting.by(), LONGEST_NAME, "by", errors);
        errors.refuseIfAny();
        return kind;
    }

    private static void words(String words, int most, String field, FieldErrors errors) {
        errors.atMost(words, most, field);
        errors.check(words == null || words.indexOf('\0') < 0, field, "holds a NUL character");
    }
}
