package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.use.storage.Rental;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** The rentals of some units that lie around some entries, read at once and locked against other writers. */
final class LoggedRentals {
    /** A stretch of time; a null end is open. */
    record Reach(Instant from, Instant until) {}

    private final Map<UUID, List<Rental>> byUnit = new HashMap<>();

    private LoggedRentals() {}

    static LoggedRentals around(List<Unit> units, Reach reach) {
        List<UUID> ids = units.stream().map(unit -> unit.id).sorted().toList();
        Rental.lockLogs(ids);
        var logs = new LoggedRentals();
        Rental.touching(ids, reach.from(), reach.until()).forEach(logs::add);
        return logs;
    }

    void add(Rental rental) {
        byUnit.computeIfAbsent(rental.unit.id, none -> new ArrayList<>()).add(rental);
    }

    /** Returns the rental that begins at this moment, or null. */
    Rental startingAt(Unit unit, Instant out) {
        return of(unit).stream()
                .filter(rental -> rental.outAt.equals(out))
                .findFirst()
                .orElse(null);
    }

    /** Returns another rental that shares time with a span, or null; a null end is open. */
    Rental sharingTime(Unit unit, Rental except, Instant out, Instant back) {
        return of(unit).stream()
                .filter(rental -> rental != except)
                .filter(rental -> back == null || rental.outAt.isBefore(back))
                .filter(rental -> rental.backAt == null || rental.backAt.isAfter(out))
                .findFirst()
                .orElse(null);
    }

    private List<Rental> of(Unit unit) {
        return byUnit.getOrDefault(unit.id, List.of());
    }
}
