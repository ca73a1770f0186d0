package dev.lapwing.use.application;

import dev.lapwing.fleet.DepotSaved;
import dev.lapwing.platform.Refused;
import dev.lapwing.use.domain.Season;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;

/** Refuses a depot whose season the care rules could not work with. */
@ApplicationScoped
class CheckingSeasons {
    private static final int BEFORE_ANYTHING_FOLLOWS = 100;

    void depotSaved(@Observes @Priority(BEFORE_ANYTHING_FOLLOWS) DepotSaved saved) {
        try {
            Season.of(saved.seasonOpens(), saved.seasonCloses());
        } catch (IllegalArgumentException wrong) {
            throw Refused.invalid("season", wrong.getMessage());
        }
    }
}
