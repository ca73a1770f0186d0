package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.Set;

/**
 * Which roofs a rule is for. What is not set does not matter; what is set must all hold.
 *
 * @param surfaces words of surfaces, empty for any
 * @param roofOlderThanYears least age of the roof in years, 0 for any; a roof of unknown age counts as old
 * @param storedOutside whether the unit must stand outside between rentals
 * @param underTrees whether it must stand under trees
 */
public record Conditions(Set<String> surfaces, int roofOlderThanYears, boolean storedOutside, boolean underTrees) {
    /** Every roof. */
    public static final Conditions NONE = new Conditions(Set.of(), 0, false, false);

    public Conditions {
        surfaces = Set.copyOf(surfaces);
    }

    boolean mayHoldFor(Roof roof) {
        return (surfaces.isEmpty() || surfaces.contains(roof.surface()))
                && (!storedOutside || roof.storedOutside())
                && (!underTrees || roof.underTrees());
    }

    /** Returns the day from which the age condition holds, or null when it always did. */
    LocalDate holdsFrom(Roof roof) {
        return roofOlderThanYears == 0 || roof.installedOn() == null
                ? null
                : roof.installedOn().plusYears(roofOlderThanYears);
    }
}
