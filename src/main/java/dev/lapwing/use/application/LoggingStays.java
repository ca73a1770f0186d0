package dev.lapwing.use.application;

import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.domain.LogKind;
import dev.lapwing.use.storage.Rental;
import dev.lapwing.use.storage.Stay;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Event;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.UUID;

/**
 * Keeps when a unit was in storage or in the workshop. A stay shares no time with another, nor with a rental that is
 * known when it is entered; storage until further notice is interrupted by the rentals that follow.
 */
@ApplicationScoped
public class LoggingStays {
    private static final int LONGEST_NOTE = 500;
    private static final Map<String, LogKind> KINDS =
            Map.of(LogKind.STORAGE.word(), LogKind.STORAGE, LogKind.WORKSHOP.word(), LogKind.WORKSHOP);

    @Inject
    Event<UnitSaved> saved;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Adds a stay. */
    @Transactional
    public Stay add(String number, StayEntry entry, String by) {
        var stay = new Stay();
        stay.id = ids.next();
        stay.unit = lock(number);
        return keep(stay, entry, by);
    }

    /** Replaces what is known of a stay, such as when it ended. */
    @Transactional
    public Stay change(String number, UUID id, StayEntry entry, String by) {
        return keep(Stay.require(lock(number), id), entry, by);
    }

    private static Unit lock(String number) {
        Unit unit = Unit.require(number);
        Rental.lockLogs(List.of(unit.id));
        return unit;
    }

    private Stay keep(Stay stay, StayEntry entry, String by) {
        Instant now = clock.instant();
        fill(stay, entry, now);
        stay.notedBy = by;
        stay.notedAt = now;
        stay.persistAndFlush();
        saved.fire(UnitSaved.withoutPattern(stay.unit.id, now, by));
        return stay;
    }

    private static void fill(Stay stay, StayEntry entry, Instant now) {
        var errors = new FieldErrors();
        LogKind kind = kind(entry.kind(), errors);
        LogTimes.check(new LogTimes("from", entry.from()), new LogTimes("until", entry.until()), now, errors);
        Storage place = errors.word(Storage.class, entry.place(), "place").orElse(null);
        errors.check(place == null || kind != LogKind.WORKSHOP, "place", "is for storage; a workshop has none");
        errors.atMost(entry.note(), LONGEST_NOTE, "note");
        errors.check(entry.note() == null || entry.note().indexOf('\0') < 0, "note", "holds a NUL character");
        errors.refuseIfAny();
        Instant from = LogTimes.exact(entry.from());
        Instant until = LogTimes.exact(entry.until());
        checkFree(stay, kind, from, until, errors);
        errors.refuseIfAny();
        stay.kind = kind;
        stay.fromAt = from;
        stay.untilAt = until;
        stay.place = place;
        stay.note = entry.note() == null || entry.note().isBlank()
                ? null
                : entry.note().strip();
    }

    private static LogKind kind(String word, FieldErrors errors) {
        if (!errors.present(word, "kind")) {
            return null;
        }
        LogKind kind = KINDS.get(word.strip().toLowerCase(Locale.ROOT));
        errors.check(kind != null, "kind", "must be one of storage, workshop");
        return kind;
    }

    private static void checkFree(Stay stay, LogKind kind, Instant from, Instant until, FieldErrors errors) {
        Stay.sharingTime(stay.unit, stay.id, from, until)
                .ifPresent(other ->
                        errors.check(false, "from", LogTimes.overlap(other.kind.word(), other.fromAt, other.untilAt)));
        boolean untilFurtherNotice = kind == LogKind.STORAGE && until == null;
        Instant reach = untilFurtherNotice ? from.plusNanos(1) : until;
        Rental.sharingTime(stay.unit, stay.id, from, reach)
                .ifPresent(other -> errors.check(false, "from", LogTimes.overlap("rental", other.outAt, other.backAt)));
    }
}
