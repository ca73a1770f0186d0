package dev.lapwing.care.domain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.care.domain.SimulatedUnit.Life;
import dev.lapwing.use.domain.DaySpan;
import java.time.LocalDate;
import java.util.List;
import java.util.Random;
import org.jboss.logging.Logger;
import org.junit.jupiter.api.Test;

/**
 * Two thousand units through ten years, with the service down for weeks and clocks days off. Every sweep of every unit is
 * checked. Another seed can be given with {@code -Dlapwing.simulation.seed}.
 */
class FleetSimulationTest {
    private static final Logger LOG = Logger.getLogger(FleetSimulationTest.class);
    private static final int UNITS = 2000;
    private static final LocalDate END = SimulatedYears.START.plusDays(SimulatedYears.DAYS - 1L);

    @Test
    void tenYearsOfAFleetKeepEveryPromise() {
        long seed = Long.getLong("lapwing.simulation.seed", 20261125L);
        LOG.infof("fleet simulation: seed %d, %d units, %d days", seed, UNITS, SimulatedYears.DAYS);
        var years = new SimulatedYears(new Random(seed));
        var engine = new DueEngine(CareFixture.RULES);
        long sweeps = 0;
        long inspections = 0;

        for (int number = 0; number < UNITS; number++) {
            var unit = new SimulatedUnit(number, lifeOf(number), years, engine, seed);
            sweeps += unit.live();
            inspections += unit.record.size();
            check(unit, seed);
        }

        LOG.infof("fleet simulation: %d sweeps checked, %d pieces of work done", sweeps, inspections);
        assertThat(sweeps).isGreaterThan(UNITS * 2000L);
        assertThat(inspections).isGreaterThan(UNITS * 20L);
    }

    private static Life lifeOf(int number) {
        return switch (number % 4) {
            case 0 -> Life.STEADY_FULL_TIME;
            case 1 -> Life.STEADY_SEASONAL;
            default -> Life.RESTLESS;
        };
    }

    private static void check(SimulatedUnit simulated, long seed) {
        String name = simulated.unit.number + ", seed " + seed;
        if (simulated.life == Life.STEADY_FULL_TIME) {
            LocalDate from = SimulatedYears.START.plusDays(30);
            assertThat(InspectionsPerYearTest.fewestIn365Days(simulated.record, from, END))
                    .as(name)
                    .isGreaterThanOrEqualTo(3);
        } else if (simulated.life == Life.STEADY_SEASONAL) {
            seasonsHaveTheirTwo(simulated, name);
        }
    }

    private static void seasonsHaveTheirTwo(SimulatedUnit simulated, String name) {
        for (int year = 2027; year <= 2034; year++) {
            DaySpan run = simulated.unit.season.openingIn(year);
            DaySpan next = simulated.unit.season.openingIn(year + 1);
            List<TaskOrigin> done = simulated.record.stream()
                    .filter(work -> InspectionsPerYearTest.belongsTo(work, run, next))
                    .map(DoneWork::origin)
                    .toList();
            assertThat(done)
                    .as(name + ", season of " + year)
                    .containsExactly(TaskOrigin.SEASON_OPENING, TaskOrigin.SEASON_CLOSING);
        }
    }
}
