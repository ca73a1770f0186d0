package dev.lapwing.care.domain;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A unit with its work, which keeps what the engine says the way a store would. */
final class CareFixture {
    static final Set<String> SURFACES =
            Set.of("epdm", "tpo", "pvc", "fibreglass", "aluminium", "galvanised-steel", "other");
    static final Season SUMMER = Season.of("04-01", "10-31");
    static final CareRules RULES = defaultRules();

    String number = "HR-1";
    Roof roof = new Roof("epdm", "walkable", null, false, false);
    Service service = new Service(date("2020-01-01"), date("2019-12-01"), null, false);
    UseInForce use = new UseInForce(UsePattern.FULL_TIME, null, "set");
    ZoneId zone = ZoneId.of("Europe/Oslo");
    Season season = SUMMER;
    LocalDate seasonSince;
    final List<DaySpan> rentals = new ArrayList<>();
    final List<DoneWork> done = new ArrayList<>();
    final List<OpenTask> open = new ArrayList<>();
    final List<CareEvent> events = new ArrayList<>();
    final List<String> calledOff = new ArrayList<>();
    private int nextTask = 1;

    static CareFixture fullTimeUnit() {
        return new CareFixture();
    }

    static CareFixture seasonalUnit() {
        return new CareFixture().use(UsePattern.SEASONAL, null);
    }

    static LocalDate date(String text) {
        return LocalDate.parse(text);
    }

    static String rulesJson() {
        try {
            return Files.readString(Path.of("shared/care/rules.json"));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static CareRules defaultRules() {
        return RuleFile.read(rulesJson(), SURFACES);
    }

    CareFixture use(UsePattern pattern, LocalDate since) {
        use = new UseInForce(pattern, since, "set");
        return this;
    }

    CareFixture inspected(String on) {
        return inspected(TaskOrigin.INTERVAL, on);
    }

    CareFixture inspected(TaskOrigin origin, String on) {
        TaskKind kind = origin == TaskOrigin.STRIKE ? TaskKind.STRIKE_INSPECTION : TaskKind.INSPECTION;
        done.add(new DoneWork(kind, origin, date(on), null));
        return this;
    }

    CareFixture rented(String out, String back) {
        rentals.add(new DaySpan(date(out), back == null ? null : date(back)));
        return this;
    }

    UnitFacts facts() {
        return new UnitFacts(number, roof, service, use, zone, season, seasonSince, rentals, done, open, events);
    }

    Plan plan(String today) {
        return new DueEngine(RULES).plan(facts(), date(today));
    }

    /** Plans and stores, as one sweep does. */
    Plan sweep(String today) {
        return sweep(new DueEngine(RULES), date(today));
    }

    Plan sweep(DueEngine engine, LocalDate today) {
        Plan plan = engine.plan(facts(), today);
        for (Change change : plan.changes()) {
            if (change instanceof Change.CallOff callOff) {
                open.removeIf(task -> task.id().equals(callOff.task()));
                calledOff.add(callOff.reason());
            } else if (change instanceof Change.Create create) {
                open.add(stored(create, today));
            }
        }
        return plan;
    }

    private OpenTask stored(Change.Create create, LocalDate today) {
        return new OpenTask(
                "T" + nextTask++, create.kind(), create.origin(), create.window(), today, false, create.event());
    }

    /** Signs the only open task of its kind off. */
    CareFixture signOff(TaskKind kind, String on) {
        OpenTask task = open.stream()
                .filter(candidate -> candidate.kind() == kind)
                .findFirst()
                .orElseThrow();
        signOff(task, date(on));
        return this;
    }

    void signOff(OpenTask task, LocalDate on) {
        open.remove(task);
        done.add(new DoneWork(task.kind(), task.origin(), on, task.event()));
        events.removeIf(event -> event.id().equals(task.event()));
    }

    /** Adds tasks, each with an id of its own. */
    void addOpen(List<OpenTask> tasks) {
        tasks.forEach(task -> open.add(new OpenTask(
                "T" + nextTask++,
                task.kind(),
                task.origin(),
                task.window(),
                task.plannedOn(),
                task.touched(),
                task.event())));
    }

    /** Adds events, each with an id of its own. */
    void addEvents(List<CareEvent> added) {
        added.forEach(event -> events.add(new CareEvent("E" + events.size(), event.origin(), event.at(), event.day())));
    }

    CareFixture copy() {
        var copy = new CareFixture();
        copy.number = number;
        copy.roof = roof;
        copy.service = service;
        copy.use = use;
        copy.zone = zone;
        copy.season = season;
        copy.seasonSince = seasonSince;
        copy.rentals.addAll(rentals);
        copy.done.addAll(done);
        copy.open.addAll(open);
        copy.events.addAll(events);
        copy.nextTask = nextTask;
        return copy;
    }

    /** Marks every open task as taken in hand by a person. */
    CareFixture touched() {
        open.replaceAll(task -> new OpenTask(
                task.id(), task.kind(), task.origin(), task.window(), task.plannedOn(), true, task.event()));
        return this;
    }

    OpenTask onlyOpen() {
        if (open.size() != 1) {
            throw new AssertionError("expected one open task, found " + open);
        }
        return open.get(0);
    }
}
