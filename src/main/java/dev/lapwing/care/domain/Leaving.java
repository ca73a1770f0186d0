package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.List;

/**
 * Ends the work of a unit that is not in service. Scheduled work goes; once the unit is sold, so does follow-up work.
 * Event work stays for a person to settle, since a hold may hang on it.
 */
final class Leaving {
    private Leaving() {}

    static void plan(UnitFacts facts, LocalDate today, List<Change> changes) {
        boolean sold = facts.service().goneBy(today);
        String reason = reason(facts.service(), sold, today);
        for (OpenTask task : facts.open()) {
            boolean needless = task.origin().scheduled() || sold;
            if (!needless) {
                continue;
            }
            if (task.touched() || task.origin().event()) {
                changes.add(new Change.Ask(task.id(), "Still needed? " + reason + "."));
            } else {
                changes.add(new Change.CallOff(task.id(), reason));
            }
        }
    }

    private static String reason(Service service, boolean sold, LocalDate today) {
        if (!service.endedBy(today)) {
            return "the unit is not in service before " + Wording.day(service.from());
        }
        return (sold ? "the unit was sold on " : "the unit is out of service since ") + Wording.day(service.until());
    }
}
