package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.LadderPace;
import dev.lapwing.alerts.rain.RainClock;
import dev.lapwing.alerts.rain.RainSettings;
import dev.lapwing.care.RainOutlook;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.util.Map;

/** How fast the ladder is climbed: as set for the depot, quicker while rain is near. */
@ApplicationScoped
class LadderPaces {
    @Inject
    LadderSettings settings;

    @Inject
    RainClock rain;

    @Inject
    RainSettings rainSettings;

    /** The paces of all depots at one instant. */
    interface Now {
        LadderPace of(String depotCode);
    }

    Now at(Instant now) {
        Map<String, RainOutlook.Outlook> outlooks = rain.all(now);
        return depot -> {
            LadderPace pace = settings.pace(depot);
            return rain.near(outlooks.get(depot), now) ? pace.times(rainSettings.quicken()) : pace;
        };
    }
}
