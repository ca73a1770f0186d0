package dev.lapwing.demo;

import dev.lapwing.care.application.Sweeping;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.SweepRun;
import dev.lapwing.care.storage.SweepWriter;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Footing;
import dev.lapwing.fleet.Roof;
import dev.lapwing.fleet.Storage;
import dev.lapwing.fleet.Surface;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitKind;
import dev.lapwing.people.Role;
import dev.lapwing.people.Staff;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.Rental;
import dev.lapwing.use.storage.SetPattern;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Loads the invented fleet: the same one for the same moment. */
@ApplicationScoped
class LoadingDemo {
    private static final long SEED = 20;
    private static final int PAST_DAYS = 370;
    private static final int NEW_DAYS = 40;
    private static final int ARRIVED_DAYS = 4;
    private static final Duration TIME_FOR_STEPS = Duration.ofHours(4);
    private static final Duration BACK_FOR_WORK = Duration.ofHours(30);

    @ConfigProperty(name = "lapwing.demo.folder", defaultValue = "shared/demo")
    Path folder;

    @Inject
    DemoPeople people;

    @Inject
    Stories stories;

    @Inject
    Sweeping sweeping;

    @Inject
    Clock clock;

    /** Loads the fleet unless there is anything in the database; returns whether the demo is what is in there. */
    boolean loadIfEmpty() {
        var files = new DemoFiles(folder);
        Instant now = clock.instant();
        boolean empty = QuarkusTransaction.requiringNew().call(() -> Depot.count() == 0 && Staff.count() == 0);
        if (empty) {
            QuarkusTransaction.requiringNew().run(() -> load(files, now));
            sweeping.run(sweeping.begin(null, SweepRun.Cause.DEMO, SweepWriter.SWEEP).id);
            QuarkusTransaction.requiringNew().run(() -> takeInHand(files, now));
            return true;
        }
        return QuarkusTransaction.requiringNew().call(() -> renew(files));
    }

    private boolean renew(DemoFiles files) {
        boolean loadedBefore = files.depots().stream().allMatch(row -> Depot.findById(row.text("code")) != null);
        if (loadedBefore) {
            people.renewPasswords(files.staff());
        }
        return loadedBefore;
    }

    /** Takes the work that the sweep planned as far as the table of units says. */
    private static void takeInHand(DemoFiles files, Instant now) {
        for (DemoFiles.Row row : files.units()) {
            Unit unit = Unit.require(row.text("number"));
            CareTask.<CareTask>list(
                            "unit = ?1 and createdBy = ?2 and state = ?3", unit, SweepWriter.SWEEP, TaskState.PLANNED)
                    .forEach(task -> takeInHand(task, row, now));
        }
    }

    private static void takeInHand(CareTask task, DemoFiles.Row row, Instant now) {
        Instant opened = task.opens.atTime(2, 30).atZone(task.depot.zoneId()).toInstant();
        Instant made = opened.isBefore(now) ? opened : now;
        List<Staff> techs = Staff.at(task.depot.code, Role.TECH);
        String tech = techs.get(Math.floorMod(task.unit.number.hashCode(), techs.size())).username;
        var state = row.constant(TaskState.class, "openWork").orElse(TaskState.PLANNED);
        boolean time = made.isBefore(now.minus(TIME_FOR_STEPS));
        new DemoTask(task, made).to(time ? state : TaskState.PLANNED, tech).store();
    }

    private void load(DemoFiles files, Instant now) {
        people.writeDepots(files.depots());
        people.writeStaff(files.staff(), now.minus(Duration.ofDays(PAST_DAYS)));
        people.writeRota(files.rota(), now.atZone(ZoneId.of("UTC")).toLocalDate());
        Map<String, List<DemoFiles.Row>> storiesByUnit =
                files.stories().stream().collect(Collectors.groupingBy(row -> row.text("unit")));
        for (DemoFiles.Row row : files.units()) {
            load(row, storiesByUnit.getOrDefault(row.text("number"), List.of()), now);
        }
    }

    private void load(DemoFiles.Row row, List<DemoFiles.Row> told, Instant now) {
        Unit unit = unit(row, now);
        unit.persistAndFlush();
        var random = new SplittableRandom(SEED + unit.number.hashCode());
        RentalYear rentals = rentals(unit, row, random, now);
        List<String> techs = Staff.at(unit.depot.code, Role.TECH).stream()
                .map(tech -> tech.username)
                .toList();
        var demo = new DemoUnit(unit, row, rentals, techs, now);
        told.forEach(story -> rentals.endTripAt(returnedAt(demo, story)));
        if (row.text("openWork") != null) {
            rentals.endTripAt(now.minus(BACK_FOR_WORK));
        } else if (random.nextInt(3) == 0) {
            rentals.leaveReturnOpen(now);
        }
        write(unit, rentals);
        told.forEach(story -> stories.write(demo, story, returnedAt(demo, story)));
        new RoutineWork(demo, random).write();
        pattern(unit, row, now);
    }

    private static Unit unit(DemoFiles.Row row, Instant now) {
        var unit = new Unit();
        unit.id = DemoIds.of("unit", row.text("number"));
        unit.number = row.text("number");
        unit.vin = row.text("vin");
        unit.kind = row.constant(UnitKind.class, "kind").orElseThrow();
        unit.depot = Depot.findById(row.text("depot"));
        unit.lengthMetres = new BigDecimal(row.text("lengthMetres"));
        unit.heightMetres = new BigDecimal(row.text("heightMetres"));
        LocalDate today = unit.depot.dateAt(now);
        unit.roof = roof(row, today);
        unit.storage = row.constant(Storage.class, "storage").orElseThrow();
        unit.inServiceFrom = switch (row.text("rents")) {
            case "new" -> today.minusDays(NEW_DAYS);
            case "arriving" -> today.minusDays(ARRIVED_DAYS);
            default -> unit.roof.installedOn;
        };
        unit.createdAt =
                unit.inServiceFrom.atTime(9, 0).atZone(unit.depot.zoneId()).toInstant();
        return unit;
    }

    private static Roof roof(DemoFiles.Row row, LocalDate today) {
        var roof = new Roof();
        roof.surface = row.constant(Surface.class, "surface").orElseThrow();
        roof.footing = row.constant(Footing.class, "footing").orElseThrow();
        roof.membraneSystem = row.text("membraneSystem");
        roof.confirmedBy = row.text("confirmedBy");
        Integer confirmed = row.number("confirmedDaysAgo");
        roof.confirmedOn = confirmed == null ? null : today.minusDays(confirmed);
        roof.sealant = row.text("sealant");
        roof.installedOn = today.minusMonths(row.number("installedMonthsAgo"));
        return roof;
    }

    private static RentalYear rentals(Unit unit, DemoFiles.Row row, SplittableRandom random, Instant now) {
        boolean seasonal = "seasonal".equals(row.text("rents"));
        var season = seasonal ? new RentalYear.Season(unit.depot.opens(), unit.depot.closes()) : null;
        LocalDate today = unit.depot.dateAt(now);
        LocalDate first = unit.inServiceFrom.plusDays("arriving".equals(row.text("rents")) ? 14 : 3);
        LocalDate earliest = today.minusDays(PAST_DAYS);
        LocalDate from = first.isBefore(earliest) ? earliest : first;
        return RentalYear.of(random, from, season, now, unit.depot.zoneId());
    }

    /** Returns when the unit of a story came back; one of today is told of a while ago, whatever the hour is now. */
    private static Instant returnedAt(DemoUnit unit, DemoFiles.Row story) {
        ZoneId zone = unit.zone();
        LocalTime time = LocalTime.parse(story.text("at"));
        int daysAgo = story.number("daysAgo");
        return daysAgo == 0
                ? unit.now().minus(Duration.ofMinutes(time.toSecondOfDay() / 60 / 4))
                : unit.today().minusDays(daysAgo).atTime(time).atZone(zone).toInstant();
    }

    private static void write(Unit unit, RentalYear rentals) {
        for (RentalYear.Span span : rentals.spans()) {
            var rental = new Rental();
            rental.id = DemoIds.of(unit.number, "rental", span.out());
            rental.unit = unit;
            rental.outAt = span.out();
            rental.backAt = span.back();
            rental.reference = "R" + Math.floorMod(rental.id.hashCode(), 1_000_000);
            rental.persist();
        }
    }

    private static void pattern(Unit unit, DemoFiles.Row row, Instant now) {
        row.constant(UsePattern.class, "usePattern").ifPresent(pattern -> {
            var set = new SetPattern();
            set.unitId = unit.id;
            set.pattern = pattern;
            set.reason = row.text("useReason");
            set.setBy = DemoTask.COORDINATOR;
            set.setAt = now.minus(Duration.ofDays(NEW_DAYS));
            set.persist();
        });
    }
}
