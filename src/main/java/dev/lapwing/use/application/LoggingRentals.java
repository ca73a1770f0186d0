package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.storage.Rental;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** Keeps the rental log: a unit is out once at a time. */
@ApplicationScoped
public class LoggingRentals {
    @Inject
    Ids ids;

    @Inject
    Clock clock;

    /** Adds a rental; refuses one that shares time with another of the unit. */
    @Transactional
    public Rental add(String number, RentalEntry entry) {
        Unit unit = lock(number);
        var rental = new Rental();
        rental.id = ids.next();
        rental.unit = unit;
        fill(rental, entry);
        rental.persistAndFlush();
        return rental;
    }

    /** Replaces what is known of a rental, such as when the unit came back. */
    @Transactional
    public Rental change(String number, UUID id, RentalEntry entry) {
        Rental rental = Rental.require(lock(number), id);
        fill(rental, entry);
        rental.persistAndFlush();
        return rental;
    }

    /** Two entries for one unit wait for each other, so that neither misses the other's time. */
    private static Unit lock(String number) {
        Unit unit = Unit.require(number);
        Rental.lockLogs(List.of(unit.id));
        return unit;
    }

    private void fill(Rental rental, RentalEntry entry) {
        var errors = new FieldErrors();
        LogTimes.check(new LogTimes("out", entry.out()), new LogTimes("back", entry.back()), clock.instant(), errors);
        errors.atMost(entry.reference(), LogTimes.LONGEST_REFERENCE, "reference");
        errors.refuseIfAny();
        Instant out = LogTimes.exact(entry.out());
        Instant back = LogTimes.exact(entry.back());
        Rental.sharingTime(rental.unit, rental.id, out, back)
                .ifPresent(other -> errors.check(false, "out", LogTimes.overlap("rental", other.outAt, other.backAt)));
        errors.refuseIfAny();
        rental.outAt = out;
        rental.backAt = back;
        rental.reference = entry.reference() == null || entry.reference().isBlank()
                ? null
                : entry.reference().strip();
    }
}
