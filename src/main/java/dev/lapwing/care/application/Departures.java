package dev.lapwing.care.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.use.storage.Rental;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Optional;

/** Knows when units leave the yard. */
@ApplicationScoped
public class Departures {
    /** Returns when a unit is booked to go out next, or empty when nothing is booked. */
    public Optional<Instant> next(Unit unit, Instant after) {
        return Rental.nextOf(unit, after).map(rental -> rental.outAt);
    }
}
