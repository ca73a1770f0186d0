package dev.lapwing.care.domain;

import static dev.lapwing.care.domain.CareFixture.date;
import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.use.domain.DaySpan;
import dev.lapwing.use.domain.Season;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** How often roofs are seen when every task is done on some day of its window. Common practice, no source. */
class InspectionsPerYearTest {
    private static final DueEngine ENGINE = new DueEngine(CareFixture.RULES);
    private static final LocalDate START = date("2026-01-01");
    private static final LocalDate END = date("2030-12-31");

    @Property(tries = 100)
    void fullTimeUnitIsInspectedAtLeastThreeTimesInAny365Days(@ForAll long seed) {
        var random = new Random(seed);
        var unit = CareFixture.fullTimeUnit().inspected("2025-12-20");
        unit.roof = new Roof("epdm", "walkable", date("2018-05-01"), random.nextBoolean(), random.nextBoolean());

        List<DoneWork> done = live(unit, random, true);

        assertThat(fewestIn365Days(done, START, END)).isGreaterThanOrEqualTo(3);
    }

    @Property(tries = 200)
    void seasonalUnitIsInspectedExactlyAtOpeningAndClosing(@ForAll("seasons") Season season, @ForAll long seed) {
        var random = new Random(seed);
        var unit = CareFixture.seasonalUnit();
        unit.season = season;
        unit.done.add(new DoneWork(TaskKind.INSPECTION, TaskOrigin.INTAKE, START, null));
        rent(unit, random);

        List<DoneWork> done = live(unit, random, false);

        for (int year = 2027; year <= 2029; year++) {
            DaySpan run = season.openingIn(year);
            DaySpan next = season.openingIn(year + 1);
            assertThat(done.stream().filter(work -> belongsTo(work, run, next)).map(DoneWork::origin))
                    .as("season of " + run)
                    .containsExactly(TaskOrigin.SEASON_OPENING, TaskOrigin.SEASON_CLOSING);
        }
    }

    @Provide
    Arbitrary<Season> seasons() {
        return FleetArbitraries.seasons();
    }

    /** Inspections of a season lie between the first day its opening may be done and that of the next one. */
    static boolean belongsTo(DoneWork work, DaySpan run, DaySpan next) {
        int earliest = 1
                + CareFixture.RULES.opening().earlyRentalDays()
                + CareFixture.RULES.opening().opensBefore();
        boolean opening = work.origin() == TaskOrigin.SEASON_OPENING;
        LocalDate from = opening ? run.first().minusDays(earliest) : run.first();
        LocalDate until = opening ? next.first().minusDays(earliest) : next.first();
        return !work.on().isBefore(from) && work.on().isBefore(until);
    }

    private static List<DoneWork> live(CareFixture unit, Random random, boolean strikes) {
        var done = new ArrayList<>(unit.done);
        for (LocalDate day = START; !day.isAfter(END); day = day.plusDays(1)) {
            if (strikes && random.nextInt(120) == 0) {
                strike(unit, day);
            }
            unit.sweep(ENGINE, day);
            for (OpenTask task : List.copyOf(unit.open)) {
                DueWindow window = task.window();
                boolean inWindow = !day.isBefore(window.opens());
                if (inWindow && (!day.isBefore(window.late()) || random.nextInt(15) == 0)) {
                    unit.signOff(task, day);
                    done.add(unit.done.get(unit.done.size() - 1));
                }
            }
        }
        return done;
    }

    private static void strike(CareFixture unit, LocalDate day) {
        Instant at = day.atTime(9, 0).toInstant(ZoneOffset.UTC);
        unit.events.add(new CareEvent("S" + day, TaskOrigin.STRIKE, at, day));
    }

    private static void rent(CareFixture unit, Random random) {
        LocalDate out = START.plusDays(random.nextInt(20));
        while (out.isBefore(END)) {
            LocalDate back = out.plusDays(random.nextInt(21));
            unit.rentals.add(new DaySpan(out, back));
            out = back.plusDays(1 + random.nextInt(60));
        }
    }

    static int fewestIn365Days(List<DoneWork> done, LocalDate from, LocalDate until) {
        int fewest = Integer.MAX_VALUE;
        for (LocalDate start = from; !start.plusDays(364).isAfter(until); start = start.plusDays(1)) {
            LocalDate first = start;
            LocalDate last = start.plusDays(364);
            int count = (int) done.stream()
                    .filter(work -> work.kind().fullInspection())
                    .filter(work -> !work.on().isBefore(first) && !work.on().isAfter(last))
                    .count();
            fewest = Math.min(fewest, count);
        }
        return fewest;
    }
}
