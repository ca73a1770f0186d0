package dev.lapwing.alerts.rain;

import dev.lapwing.alerts.domain.rain.BadForecast;
import dev.lapwing.alerts.domain.rain.Forecast;
import dev.lapwing.care.RainOutlook;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.jboss.logging.Logger;

/** Tells when the next rain is likely at each depot: from what was entered by hand while it holds, else from the feed. */
@ApplicationScoped
public class RainClock implements RainOutlook {
    private static final Logger LOG = Logger.getLogger(RainClock.class);

    private record Parsed(Instant fetchedAt, Optional<Forecast> forecast) {}

    private final Map<String, Parsed> known = new ConcurrentHashMap<>();

    @Inject
    RainSettings settings;

    @Override
    @Transactional
    public Map<String, Outlook> all(Instant now) {
        Map<String, Outlook> outlooks = new HashMap<>();
        for (StoredForecast.Heading heading : StoredForecast.issuedSince(now.minus(settings.tooOld()))) {
            forecast(heading)
                    .filter(forecast -> forecast.reaches().isAfter(now))
                    .ifPresent(forecast -> outlooks.put(heading.depot(), outlook(forecast, now)));
        }
        List<RainByHand> byHand = RainByHand.list("holdsUntil > ?1", now);
        for (RainByHand entered : byHand) {
            Instant rain = entered.rainAt == null || entered.rainAt.isAfter(now) ? entered.rainAt : now;
            outlooks.put(entered.depot, new Outlook(rain, entered.holdsUntil));
        }
        return outlooks;
    }

    /** Returns whether rain is so near that strikes are pressed harder. */
    public boolean near(Outlook outlook, Instant now) {
        return outlook != null
                && outlook.rainAt() != null
                && Duration.between(now, outlook.rainAt()).compareTo(settings.near()) <= 0;
    }

    private Outlook outlook(Forecast forecast, Instant now) {
        return new Outlook(forecast.rainAt(now, settings.likely()).orElse(null), forecast.reaches());
    }

    /** Reads each forecast once. */
    private Optional<Forecast> forecast(StoredForecast.Heading heading) {
        Parsed parsed = known.get(heading.depot());
        if (parsed == null || !parsed.fetchedAt().equals(heading.fetchedAt())) {
            parsed = new Parsed(heading.fetchedAt(), read(heading.depot()));
            known.put(heading.depot(), parsed);
        }
        return parsed.forecast();
    }

    /** A forecast kept from before the format of the feed was changed cannot be read; the next fetch replaces it. */
    private Optional<Forecast> read(String depot) {
        StoredForecast stored = StoredForecast.findById(depot);
        try {
            return Optional.of(settings.format().read(stored.forecast));
        } catch (BadForecast e) {
            LOG.warnf("The forecast kept for %s is of no use: the feed %s", depot, e.getMessage());
            return Optional.empty();
        }
    }
}
