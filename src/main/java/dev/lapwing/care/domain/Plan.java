package dev.lapwing.care.domain;

import java.util.List;
import java.util.Optional;

/**
 * What the engine says about one unit.
 *
 * @param unit number of the unit
 * @param inService whether it is in service on the day asked about
 * @param changes in the order they are to be carried out: calling off comes before creating
 * @param next the next work once the changes are made, null when there is none
 */
public record Plan(String unit, boolean inService, List<Change> changes, NextDue next) {
    public Plan {
        changes = List.copyOf(changes);
    }

    public Optional<NextDue> nextDue() {
        return Optional.ofNullable(next);
    }

    /** Returns whether the unit is in service and has no next date, which sound rules never allow: report it. */
    public boolean withoutSchedule() {
        return inService && next == null;
    }

    /** Returns whether anything is to be stored. */
    public boolean changesAnything() {
        return changes.stream().anyMatch(change -> change instanceof Change.Create || change instanceof Change.CallOff);
    }
}
