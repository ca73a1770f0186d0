package dev.lapwing.demo;

import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/** Makes up the washes with inspection of a unit's last year. What is open is left to the sweep. */
final class RoutineWork {
    private static final int YEAR = 365;
    private static final int INTERVAL = 91;
    private static final int PLANNED_BEFORE = 14;
    private static final String SIGNED = "Signed off: washed, dried, inspected; nothing open";

    private final DemoUnit unit;
    private final SplittableRandom random;
    private final boolean latestIsOpen;
    private int turn;

    RoutineWork(DemoUnit unit, SplittableRandom random) {
        this.unit = unit;
        this.random = random;
        latestIsOpen = unit.row().text("openWork") != null;
    }

    void write() {
        switch (unit.row().text("rents")) {
            case "full-time" -> fullTime();
            case "seasonal" -> seasonal();
            case "new" -> intake();
            default -> {
                // A unit that has just arrived has no past.
            }
        }
        Integer calledOff = unit.row().number("calledOffDaysAgo");
        if (calledOff != null) {
            calledOff(unit.today().minusDays(calledOff));
        }
    }

    private void fullTime() {
        LocalDate last = unit.today().minusDays(unit.row().number("lastDoneDaysAgo"));
        LocalDate done = last;
        while (done.isAfter(unit.today().minusDays(YEAR)) && done.isAfter(unit.unit().inServiceFrom)) {
            done(TaskOrigin.INTERVAL, "full-time", done);
            done = done.minusDays(random.nextInt(INTERVAL - 9, INTERVAL + 5));
        }
    }

    private void seasonal() {
        List<SeasonDay> past = seasonDays();
        int over = latestIsOpen ? past.size() - 1 : past.size();
        for (SeasonDay day : past.subList(0, Math.max(0, over))) {
            if (day.date.isAfter(unit.unit().inServiceFrom)) {
                done(day.origin, day.rule(), day.date.plusDays(random.nextInt(2, 9)));
            }
        }
    }

    private record SeasonDay(TaskOrigin origin, LocalDate date) {
        String rule() {
            return origin == TaskOrigin.SEASON_OPENING ? "season-opening" : "season-closing";
        }
    }

    /** Returns the openings and closings of the last year, oldest first, as far as work on them can be over. */
    private List<SeasonDay> seasonDays() {
        LocalDate newest = unit.today().minusDays(9);
        var days = new ArrayList<SeasonDay>();
        for (int year = newest.getYear() - 1; year <= newest.getYear(); year++) {
            MonthDay opens = unit.unit().depot.opens();
            days.add(new SeasonDay(TaskOrigin.SEASON_OPENING, opens.atYear(year).minusDays(12)));
            days.add(new SeasonDay(
                    TaskOrigin.SEASON_CLOSING, unit.unit().depot.closes().atYear(year)));
        }
        days.removeIf(day -> day.date.isAfter(newest) || day.date.isBefore(newest.minusDays(YEAR)));
        days.sort(Comparator.comparing(SeasonDay::date));
        return days;
    }

    private void intake() {
        done(TaskOrigin.INTAKE, "intake", unit.unit().inServiceFrom.plusDays(1));
    }

    private void done(TaskOrigin origin, String rule, LocalDate wanted) {
        LocalDate day = unit.rentals().dayInYard(wanted);
        var window = new DueWindow(day.minusDays(PLANNED_BEFORE), day, day.plusDays(PLANNED_BEFORE));
        String tech = unit.tech(turn++);
        plan(origin, rule, window, window.opens()).done(tech, at(day, 14), SIGNED);
    }

    private void calledOff(LocalDate day) {
        var window = new DueWindow(day.minusDays(PLANNED_BEFORE), day, day.plusDays(PLANNED_BEFORE));
        var why = "wash wanted after a stay under trees";
        new DemoTask(unit, "wash " + day, TaskKind.WASH, TaskOrigin.BY_HAND, window, at(window.opens(), 9), why)
                .calledOff("rain has washed it, the inspection is due soon");
    }

    private DemoTask plan(TaskOrigin origin, String rule, DueWindow window, LocalDate made) {
        String why = "wash with inspection: " + origin.word() + ", due " + window.due() + ", rule " + rule + " v1";
        return new DemoTask(unit, origin + " " + window.due(), TaskKind.INSPECTION, origin, window, at(made, 2), why)
                .byRule(rule);
    }

    private Instant at(LocalDate day, int hour) {
        return day.atTime(hour, 30).atZone(unit.zone()).toInstant();
    }
}
