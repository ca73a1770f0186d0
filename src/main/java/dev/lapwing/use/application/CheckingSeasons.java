package dev.lapwing.use.application;

import dev.lapwing.fleet.DepotSaved;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitSaved;
import dev.lapwing.platform.Refused;
import dev.lapwing.use.domain.Season;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Refuses a season that the care rules could not work with. */
@ApplicationScoped
class CheckingSeasons {
    private static final int BEFORE_ANYTHING_FOLLOWS = 100;

    void unitSaved(@Observes @Priority(BEFORE_ANYTHING_FOLLOWS) UnitSaved saved) {
        Unit unit = Unit.findById(saved.unitId());
        if (unit.seasonOpens != null) {
            check(unit.seasonOpens, unit.seasonCloses);
        }
    }

    void depotSaved(@Observes @Priority(BEFORE_ANYTHING_FOLLOWS) DepotSaved saved) {
        check(saved.seasonOpens(), saved.seasonCloses());
    }

    private static void check(String opens, String closes) {
        try {
            Season.of(opens, closes);
        } catch (IllegalArgumentException wrong) {
            throw Refused.invalid("season", wrong.getMessage());
        }
    }
}
