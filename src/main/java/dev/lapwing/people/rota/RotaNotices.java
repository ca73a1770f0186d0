package dev.lapwing.people.rota;

import dev.lapwing.people.domain.Span;
import dev.lapwing.web.Dates;
import dev.lapwing.web.DepotChoices;
import dev.lapwing.web.Notices;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** Says before it happens that nobody will be on duty somewhere. */
@ApplicationScoped
class RotaNotices implements Notices {
    private static final Duration AHEAD = Duration.ofHours(48);
    /** A change of the rota shows at the latest after this time. */
    private static final Duration KEPT = Duration.ofSeconds(30);

    private record Found(Instant at, List<Notice> notices) {}

    @Inject
    DutyRota duty;

    @Inject
    DepotChoices depots;

    @Inject
    Clock clock;

    private volatile Found last;

    @Override
    public List<Notice> now() {
        Instant now = clock.instant();
        Found found = last;
        if (found == null || Duration.between(found.at(), now).abs().compareTo(KEPT) > 0) {
            found = new Found(now, find(now));
            last = found;
        }
        return found.notices();
    }

    private List<Notice> find(Instant now) {
        return depots.all().stream()
                .map(depot -> firstGap(depot, now).map(gap -> notice(depot, gap)))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Span> firstGap(DepotChoices.Choice depot, Instant now) {
        return duty.gaps(depot.code(), depot.zone(), now, AHEAD).stream().findFirst();
    }

    private static Notice notice(DepotChoices.Choice depot, Span gap) {
        return new Notice(
                "Nobody is on duty at " + depot.name() + " from " + Dates.time(gap.from(), depot.zone()) + " to "
                        + Dates.time(gap.until(), depot.zone()) + " at the least.",
                "/rota?depot=" + depot.code(),
                "See the rota");
    }
}
