package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.BitSet;
import java.util.Random;

/** What happens to the service and the weather over the simulated years, the same for all units of a depot. */
final class SimulatedYears {
    static final LocalDate START = LocalDate.of(2026, 1, 1);
    static final int DAYS = 3653;
    private static final int DEPOTS = 3;

    private final BitSet down = new BitSet(DAYS);
    private final int[][] clockOff = new int[DEPOTS][DAYS];
    private final BitSet[] storms = {new BitSet(DAYS), new BitSet(DAYS), new BitSet(DAYS)};

    SimulatedYears(Random random) {
        int day = 30;
        while (day < DAYS) {
            int weeks = 1 + random.nextInt(5);
            down.set(day, Math.min(DAYS, day + 7 * weeks));
            day += 7 * weeks + 60 + random.nextInt(200);
        }
        for (int depot = 0; depot < DEPOTS; depot++) {
            for (int step = 0; step < 40; step++) {
                clockOff[depot][random.nextInt(DAYS)] = random.nextInt(7) - 3;
                storms[depot].set(random.nextInt(DAYS));
            }
        }
    }

    /** Returns whether the service is down and no sweep runs. */
    boolean down(int day) {
        return down.get(day);
    }

    /** Returns the day the clock of the depot shows, which now and then is days off. */
    LocalDate shown(int depot, int day) {
        return START.plusDays(day + clockOff[depot][day]);
    }

    boolean storm(int depot, int day) {
        return storms[depot].get(day);
    }
}
