package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UsePattern;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Units with any history: three years of work done, rentals past and booked, open work, events, new roofs, sales. */
final class FleetArbitraries {
    /** A unit and the day it is looked at. */
    record Case(CareFixture fixture, LocalDate today) {
        @Override
        public String toString() {
            return fixture.facts() + " on " + today;
        }
    }

    private static final LocalDate TODAY = LocalDate.of(2028, 2, 29);
    private static final List<TaskOrigin> INSPECTION_ORIGINS = List.of(
            TaskOrigin.INTERVAL,
            TaskOrigin.SEASON_OPENING,
            TaskOrigin.SEASON_CLOSING,
            TaskOrigin.INTAKE,
            TaskOrigin.STRIKE,
            TaskOrigin.BY_HAND);

    private FleetArbitraries() {}

    static Arbitrary<Case> units() {
        return Combinators.combine(
                        Arbitraries.of(UsePattern.values()),
                        day(-900, 0).injectNull(0.3),
                        seasons().injectNull(0.1),
                        services(),
                        roofs(),
                        done().list().ofMaxSize(12),
                        rentals().list().ofMaxSize(15),
                        Combinators.combine(
                                        openTasks().list().ofMaxSize(3),
                                        events().list().ofMaxSize(2))
                                .as(OpenWork::new))
                .as((pattern, since, season, service, roof, done, rentals, openWork) -> {
                    var unit = CareFixture.fullTimeUnit().use(pattern, since);
                    unit.season = season;
                    unit.service = service;
                    unit.roof = roof;
                    unit.done.addAll(done);
                    unit.rentals.addAll(rentals);
                    unit.addOpen(openWork.tasks());
                    unit.addEvents(openWork.events());
                    return new Case(unit, TODAY);
                });
    }

    private record OpenWork(List<OpenTask> tasks, List<CareEvent> events) {}

    static Arbitrary<Season> seasons() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 364),
                        Arbitraries.integers().between(Season.SHORTEST_DAYS, 365 - Season.SHORTEST_DAYS))
                .as((first, days) -> {
                    LocalDate opens = LocalDate.of(2025, 1, 1).plusDays(first);
                    return new Season(MonthDay.from(opens), MonthDay.from(opens.plusDays(days - 1L)));
                });
    }

    private static Arbitrary<LocalDate> day(int from, int to) {
        return Arbitraries.integers().between(from, to).map(TODAY::plusDays);
    }

    private static Arbitrary<Service> services() {
        return Combinators.combine(
                        day(-1500, 30),
                        Arbitraries.integers().between(0, 400).injectNull(0.3),
                        day(-100, 300).injectNull(0.8),
                        Arbitraries.of(true, false))
                .as((from, away, until, sold) ->
                        new Service(from, away == null ? null : from.minusDays(away), until, until != null && sold));
    }

    private static Arbitrary<Roof> roofs() {
        return Combinators.combine(
                        day(-5000, 10).injectNull(0.3), Arbitraries.of(true, false), Arbitraries.of(true, false))
                .as((installed, outside, trees) -> new Roof("epdm", "unknown", installed, outside, trees));
    }

    private static Arbitrary<DoneWork> done() {
        return Combinators.combine(Arbitraries.of(INSPECTION_ORIGINS), day(-1100, 0))
                .as((origin, on) -> new DoneWork(
                        origin == TaskOrigin.STRIKE ? TaskKind.STRIKE_INSPECTION : TaskKind.INSPECTION,
                        origin,
                        on,
                        null));
    }

    private static Arbitrary<DaySpan> rentals() {
        return Combinators.combine(
                        day(-400, 300), Arbitraries.integers().between(0, 40).injectNull(0.05))
                .as((out, days) -> new DaySpan(out, days == null ? null : out.plusDays(days)));
    }

    private static Arbitrary<OpenTask> openTasks() {
        return Combinators.combine(
                        Arbitraries.of(TaskOrigin.values()).filter(origin -> !origin.event()),
                        day(-300, 200),
                        day(-400, 0),
                        Arbitraries.of(true, false))
                .as((origin, due, plannedOn, touched) -> new OpenTask(
                        "",
                        origin == TaskOrigin.FOLLOW_UP ? TaskKind.TOUCH_UP : TaskKind.INSPECTION,
                        origin,
                        new DueWindow(due.minusDays(14), due, due.plusDays(14)),
                        plannedOn,
                        touched,
                        null));
    }

    private static Arbitrary<CareEvent> events() {
        return Combinators.combine(Arbitraries.of(TaskOrigin.values()).filter(TaskOrigin::event), day(-60, 0))
                .as((origin, day) -> new CareEvent("", origin, day.atTime(10, 0).toInstant(ZoneOffset.UTC), day));
    }
}
