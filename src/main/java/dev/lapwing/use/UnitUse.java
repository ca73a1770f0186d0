package dev.lapwing.use;

import dev.lapwing.fleet.Storage;
import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.UseInForce;
import java.util.List;

/**
 * How one unit is used, as the care of its roof reads it.
 *
 * @param inForce the pattern that counts today
 * @param rentals days out, past and booked
 * @param storedAt where it stands in storage now, or null when it stands where it does between rentals
 */
public record UnitUse(UseInForce inForce, List<DaySpan> rentals, Storage storedAt) {}
