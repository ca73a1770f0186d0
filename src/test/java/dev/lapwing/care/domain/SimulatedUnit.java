package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UsePattern;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One unit through ten years: it is rented out, struck, inspected early, on time or late, changes its use and depot, gets
 * a new roof, leaves and comes back. After every sweep {@link Invariants} are checked.
 */
final class SimulatedUnit {
    /** How the unit lives. */
    enum Life {
        /** Full-time for good, work always done in its window. */
        STEADY_FULL_TIME,
        /** Seasonal for good, never struck, work always done in its window. */
        STEADY_SEASONAL,
        /** Anything may happen, work is done at any time. */
        RESTLESS
    }

    private static final List<Season> SEASONS =
            List.of(Season.of("04-01", "10-31"), Season.of("10-01", "04-30"), Season.of("05-15", "09-20"));

    final Life life;
    final CareFixture unit;
    final List<DoneWork> record = new ArrayList<>();
    private final Random random;
    private final SimulatedYears years;
    private final DueEngine engine;
    private int depot;
    private int events;

    SimulatedUnit(int number, Life life, SimulatedYears years, DueEngine engine, long seed) {
        this.life = life;
        this.years = years;
        this.engine = engine;
        this.random = new Random(seed * 31 + number);
        this.depot = number % SEASONS.size();
        this.unit = life == Life.STEADY_SEASONAL ? CareFixture.seasonalUnit() : CareFixture.fullTimeUnit();
        unit.number = "HR-" + number;
        unit.season = SEASONS.get(depot);
        unit.roof = new Roof("epdm", "walkable", LocalDate.of(2019, 1, 1), random.nextBoolean(), random.nextBoolean());
        unit.service = Service.since(SimulatedYears.START);
    }

    /** Lives all days and returns how many sweeps were checked. */
    int live() {
        int sweeps = 0;
        for (int day = 0; day < SimulatedYears.DAYS; day++) {
            LocalDate today = SimulatedYears.START.plusDays(day);
            rent(today);
            suffer(today, years.storm(depot, day));
            if (life == Life.RESTLESS) {
                change(today);
            }
            work(today);
            if (!years.down(day)) {
                new Invariants(unit, engine).sweep(years.shown(depot, day));
                sweeps++;
            }
        }
        return sweeps;
    }

    private void rent(LocalDate today) {
        DaySpan last = unit.rentals.isEmpty() ? null : unit.rentals.get(unit.rentals.size() - 1);
        boolean free = last == null || last.last().isBefore(today);
        boolean likely = life != Life.STEADY_SEASONAL || unit.season.contains(today.plusDays(10));
        if (free && random.nextInt(likely ? 8 : 90) == 0) {
            LocalDate out = today.plusDays(random.nextInt(15));
            unit.rentals.add(new DaySpan(out, out.plusDays(random.nextInt(20))));
        }
        unit.rentals.removeIf(rental -> rental.last().isBefore(today.minusDays(420)));
    }

    private void suffer(LocalDate today, boolean storm) {
        boolean struck = life != Life.STEADY_SEASONAL && random.nextInt(400) == 0;
        if (struck) {
            event(TaskOrigin.STRIKE, today);
        } else if (life == Life.RESTLESS && (storm || random.nextInt(2000) == 0)) {
            event(storm ? TaskOrigin.STORM : TaskOrigin.WATER_INSIDE, today);
        }
    }

    private void event(TaskOrigin origin, LocalDate today) {
        unit.events.add(
                new CareEvent("E" + events++, origin, today.atTime(10, 0).toInstant(ZoneOffset.UTC), today));
    }

    private void change(LocalDate today) {
        switch (random.nextInt(1500)) {
            case 0, 1 -> unit.use(other(unit.use.pattern()), today);
            case 2 -> {
                depot = random.nextInt(SEASONS.size());
                unit.season = SEASONS.get(depot);
                unit.seasonSince = today;
            }
            case 3 -> unit.roof = new Roof("tpo", "no-walk", today, random.nextBoolean(), random.nextBoolean());
            case 4 -> leaveOrReturn(today);
            case 5, 6 -> unit.touched();
            case 7 ->
                unit.open.add(new OpenTask(
                        "F" + today, TaskKind.TOUCH_UP, TaskOrigin.FOLLOW_UP, week(today), today, false, null));
            default -> {}
        }
    }

    private void leaveOrReturn(LocalDate today) {
        Service service = unit.service;
        unit.service = service.until() == null
                ? new Service(service.from(), service.awaySince(), today, random.nextBoolean())
                : new Service(today, service.until(), null, false);
    }

    private void work(LocalDate today) {
        for (OpenTask task : List.copyOf(unit.open)) {
            if (isDone(task, today)) {
                unit.signOff(task, today);
                record.add(unit.done.get(unit.done.size() - 1));
            }
        }
        forgetOldWork();
    }

    private boolean isDone(OpenTask task, LocalDate today) {
        boolean opened = !today.isBefore(task.window().opens());
        if (life == Life.RESTLESS) {
            return random.nextInt(opened ? 25 : 300) == 0;
        }
        return opened && (!today.isBefore(task.window().late()) || random.nextInt(12) == 0);
    }

    /** Keeps what a store hands to the engine: the last scheduled inspection and what came after it. */
    private void forgetOldWork() {
        int keepFrom = 0;
        for (int index = 0; index < unit.done.size(); index++) {
            keepFrom = unit.done.get(index).origin().scheduled() ? index : keepFrom;
        }
        unit.done.subList(0, keepFrom).clear();
    }

    private static UsePattern other(UsePattern pattern) {
        return pattern == UsePattern.SEASONAL ? UsePattern.FULL_TIME : UsePattern.SEASONAL;
    }

    private static DueWindow week(LocalDate today) {
        return new DueWindow(today, today.plusDays(7), today.plusDays(14));
    }
}
