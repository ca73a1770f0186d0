package dev.lapwing.alerts.rain;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.care.RainOutlook;
import dev.lapwing.fleet.Depot;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Map;

/** What is known of the rain at each depot, and where from. */
@ApplicationScoped
class RainView {
    /**
     * The rain at a depot.
     *
     * @param source entered by hand, feed, or no forecast
     * @param rainAt when rain is likely, or absent when none is as far as the forecast reaches
     * @param until how far it reaches; absent without a forecast
     * @param enteredBy full name, when entered by hand
     * @param problem why the feed gave nothing the last time, if so
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record AtDepot(
            String depot,
            String name,
            String source,
            OffsetDateTime rainAt,
            OffsetDateTime until,
            OffsetDateTime issued,
            String enteredBy,
            String problem,
            boolean near) {}

    @Inject
    RainClock rain;

    @Inject
    RainFeed feed;

    @Inject
    PersonNames names;

    @Inject
    Clock clock;

    @Transactional
    List<AtDepot> all() {
        Instant now = clock.instant();
        Map<String, RainOutlook.Outlook> outlooks = rain.all(now);
        return Depot.byName().stream()
                .map(depot -> of(depot, outlooks.get(depot.code), now))
                .toList();
    }

    private AtDepot of(Depot depot, RainOutlook.Outlook outlook, Instant now) {
        RainByHand entered = RainByHand.findById(depot.code);
        boolean byHand = entered != null && entered.holdsUntil.isAfter(now);
        StoredForecast stored = StoredForecast.findById(depot.code);
        return new AtDepot(
                depot.code,
                depot.name,
                byHand ? "entered by hand" : outlook == null ? "no forecast" : "feed",
                outlook == null ? null : at(depot, outlook.rainAt()),
                outlook == null ? null : at(depot, outlook.until()),
                byHand || stored == null ? null : at(depot, stored.issuedAt),
                byHand ? names.of(entered.enteredBy) : null,
                problem(depot, stored),
                rain.near(outlook, now));
    }

    private String problem(Depot depot, StoredForecast stored) {
        if (feed.addressOf(depot.code).isEmpty()) {
            return "no feed is set for this depot";
        }
        return stored == null ? null : stored.problem;
    }

    private static OffsetDateTime at(Depot depot, Instant instant) {
        return instant == null ? null : instant.atZone(depot.zoneId()).toOffsetDateTime();
    }
}
