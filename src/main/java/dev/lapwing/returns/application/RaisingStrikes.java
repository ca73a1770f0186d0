package dev.lapwing.returns.application;

import dev.lapwing.fleet.RoofStruck;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.returns.storage.Strike;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;

/** Takes an overhead contact as real and tells the other areas. */
@ApplicationScoped
public class RaisingStrikes {
    private static final int LONGEST_WORDS = 300;

    @Inject
    Event<RoofStruck> struck;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** What a person says who flags a strike without a report. */
    public record Sighting(OffsetDateTime seenAt, String note, String by) {}

    /** Records a strike that a person flags; the clock of the inspection starts now. */
    @Transactional
    public Strike flag(String number, Sighting sighting, String signedIn) {
        Unit unit = Unit.require(number);
        Instant now = clock.instant();
        var errors = new FieldErrors();
        if (errors.present(sighting.seenAt(), "seenAt")) {
            errors.check(!sighting.seenAt().toInstant().isAfter(now), "seenAt", "lies in the future");
        }
        if (errors.present(sighting.note(), "note")) {
            errors.atMost(sighting.note(), NoticeCheck.LONGEST_NOTE, "note");
            errors.check(sighting.note().indexOf('\0') < 0, "note", "holds a NUL character");
        }
        errors.atMost(sighting.by(), 100, "by");
        errors.refuseIfAny();
        String by = sighting.by() == null || sighting.by().isBlank()
                ? signedIn
                : sighting.by().strip();
        return raise(unit, null, Strike.Source.PERSON, sighting.seenAt().toInstant(), sighting.note(), by);
    }

    /** Records a strike that follows from a report. */
    Strike raise(Unit unit, ReturnReport report, Strike.Source source, Instant seenAt, String words, String by) {
        var strike = new Strike();
        strike.id = ids.next();
        strike.unit = unit;
        strike.report = report;
        strike.source = source;
        strike.seenAt = seenAt;
        strike.words = shortened(words);
        strike.raisedBy = by;
        strike.raisedAt = clock.instant();
        strike.persist();
        struck.fire(new RoofStruck(strike.id, unit.id, strike.raisedAt, strike.words, by));
        return strike;
    }

    /** Returns the words on one line and no longer than a line of a list bears. */
    static String shortened(String words) {
        String line = words.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
        if (line.length() <= LONGEST_WORDS) {
            return line;
        }
        int end = Character.isHighSurrogate(line.charAt(LONGEST_WORDS - 2)) ? LONGEST_WORDS - 2 : LONGEST_WORDS - 1;
        return line.substring(0, end) + "…";
    }
}
