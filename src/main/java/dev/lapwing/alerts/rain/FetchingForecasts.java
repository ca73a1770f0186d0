package dev.lapwing.alerts.rain;

import dev.lapwing.alerts.domain.rain.BadForecast;
import dev.lapwing.alerts.domain.rain.Forecast;
import dev.lapwing.fleet.Depot;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jboss.logging.Logger;

/** Asks the feed for the forecast of each depot, as often as it is worth it, and ever more rarely while it fails. */
@ApplicationScoped
class FetchingForecasts {
    private static final Logger LOG = Logger.getLogger(FetchingForecasts.class);

    @Inject
    RainSettings settings;

    @Inject
    RainFeed feed;

    @Inject
    Clock clock;

    @Scheduled(
            identity = "rain-clock",
            every = "${lapwing.rain.look:1m}",
            delayed = "3s",
            concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
    void tick() {
        run(clock.instant());
    }

    /** Fetches every forecast whose time has come. */
    void run(Instant now) {
        if (settings.feed().isEmpty()) {
            return;
        }
        List<String> depots = QuarkusTransaction.requiringNew()
                .call(() -> Depot.byName().stream().map(depot -> depot.code).toList());
        for (String depot : depots) {
            feed.addressOf(depot).ifPresent(address -> fetch(depot, address, now));
        }
    }

    private void fetch(String depot, String address, Instant now) {
        StoredForecast last = QuarkusTransaction.requiringNew().call(() -> StoredForecast.of(depot, now));
        if (last.nextTryAt.isAfter(now)) {
            return;
        }
        try {
            RainFeed.Answer answer = feed.fetch(address, last.forecast == null ? null : last.lastModified);
            Forecast read = settings.format().read(answer.text() == null ? last.forecast : answer.text());
            QuarkusTransaction.requiringNew().run(() -> keep(depot, answer, read, now));
        } catch (IOException | BadForecast e) {
            LOG.warnf("No forecast for %s: %s", depot, e.getMessage());
            Duration pause = pause(last.failures + 1);
            QuarkusTransaction.requiringNew()
                    .run(() -> StoredForecast.of(depot, now).failed(String.valueOf(e.getMessage()), now.plus(pause)));
        }
    }

    private void keep(String depot, RainFeed.Answer answer, Forecast read, Instant now) {
        StoredForecast stored = StoredForecast.of(depot, now);
        stored.forecast = answer.text() == null ? stored.forecast : answer.text();
        stored.issuedAt = read.issued();
        stored.fetchedAt = now;
        stored.lastModified = answer.lastModified();
        stored.failures = 0;
        stored.problem = null;
        Instant usual = now.plus(settings.every());
        Instant fresh = answer.freshUntil();
        stored.nextTryAt = fresh != null && fresh.isAfter(usual) ? fresh : usual;
    }

    private Duration pause(int failures) {
        Duration pause = settings.every().multipliedBy(1L << Math.min(failures - 1, 10));
        return pause.compareTo(settings.longestPause()) > 0 ? settings.longestPause() : pause;
    }
}
