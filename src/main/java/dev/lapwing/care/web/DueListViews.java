package dev.lapwing.care.web;

import dev.lapwing.care.RainOutlook;
import dev.lapwing.care.Tech;
import dev.lapwing.care.TechRoster;
import dev.lapwing.care.domain.HoldCause;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.DueBoard;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.Depot;
import dev.lapwing.web.Dates;
import dev.lapwing.web.LivePlace;
import dev.lapwing.web.Page;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Gathers what the due list shows. */
@ApplicationScoped
class DueListViews {
    /** Rows of each section when all are shown, and of a page when only one is. */
    private static final int FEW = 25;

    private static final int PAGE = 100;
    private static final int MOST_IN_BAND = 100;
    private static final Map<Standing, String> TITLES =
            Map.of(Standing.LATE, "Late", Standing.DUE, "Due now", Standing.COMING, "Coming");

    @Inject
    DueRows rows;

    @Inject
    TechRoster roster;

    @Inject
    LivePlace live;

    @Inject
    RainOutlook rain;

    @Inject
    Clock clock;

    DueListView of(DueQuery query, DueList.Filter filter, Standing only, DueList.Place place, String here) {
        long heard = live.now();
        Instant now = clock.instant();
        var board = new DueBoard(now);
        Map<Standing, Long> counts = board.counts(filter);
        List<CareTask> strikes =
                byTimeLeft(board.after(Standing.STRIKE, filter, DueList.Place.START, MOST_IN_BAND), now);
        var view = new Sections(board, query, filter, place, now);
        return new DueListView(
                query,
                Stream.of(Standing.values())
                        .map(one -> new DueListView.Count(one.word(), counts.get(one), query.address(one, null)))
                        .toList(),
                counts.values().stream().mapToLong(Long::longValue).sum(),
                query.address(null, null),
                rows.of(strikes, now),
                held(filter, strikes),
                TITLES.keySet().stream()
                        .sorted()
                        .filter(standing -> only == null || only == standing)
                        .map(standing -> view.section(standing, counts.get(standing), only == null ? FEW : PAGE))
                        .toList(),
                techs(filter.depot()),
                here,
                heard);
    }

    /** Orders strikes by the time left before rain, then by age; where there is no forecast, rain may come any time. */
    private List<CareTask> byTimeLeft(List<CareTask> strikes, Instant now) {
        Map<String, RainOutlook.Outlook> outlooks = rain.all(now);
        return strikes.stream()
                .sorted(Comparator.comparing((CareTask task) -> rainAt(outlooks.get(task.depot.code), now))
                        .thenComparing(task -> task.dueAt))
                .toList();
    }

    private static Instant rainAt(RainOutlook.Outlook outlook, Instant now) {
        if (outlook == null) {
            return now;
        }
        return outlook.rainAt() == null ? outlook.until() : outlook.rainAt();
    }

    /** Leaves out the holds of strikes that stand above with their inspection. */
    private static List<DueListView.HeldRow> held(DueList.Filter filter, List<CareTask> strikes) {
        Set<UUID> shown = strikes.stream().map(task -> task.strikeId).collect(Collectors.toSet());
        return Hold.openAt(filter.depot(), filter.unit(), MOST_IN_BAND).stream()
                .filter(hold -> hold.cause != HoldCause.STRIKE || !shown.contains(hold.causeId))
                .map(hold -> new DueListView.HeldRow(
                        hold.id,
                        hold.unit.number,
                        hold.unit.depot.name,
                        hold.cause.word(),
                        hold.words,
                        Dates.time(hold.openedAt, hold.unit.depot.zoneId()),
                        hold.cause == HoldCause.QUESTION ? hold.causeId : null))
                .toList();
    }

    private List<Tech> techs(String depot) {
        return Depot.byName().stream()
                .filter(one -> depot == null || one.code.equals(depot))
                .flatMap(one -> roster.techsOf(one.code).stream())
                .distinct()
                .sorted(Comparator.comparing(Tech::fullName))
                .toList();
    }

    private final class Sections {
        private final DueBoard board;
        private final DueQuery query;
        private final DueList.Filter filter;
        private final DueList.Place place;
        private final Instant now;

        Sections(DueBoard board, DueQuery query, DueList.Filter filter, DueList.Place place, Instant now) {
            this.board = board;
            this.query = query;
            this.filter = filter;
            this.place = place;
            this.now = now;
        }

        DueListView.Section section(Standing standing, long total, int size) {
            List<CareTask> found = board.after(standing, filter, place, size + 1);
            Page<CareTask> page = Page.of(found, size, total, task -> Cursors.write(DueList.Place.of(task)));
            return new DueListView.Section(
                    standing.word(),
                    TITLES.get(standing),
                    total,
                    rows.of(page.items(), now),
                    page.next() == null ? null : query.address(standing, page.next()));
        }
    }
}
