package dev.lapwing.jobs.domain.material;

import java.time.Duration;
import java.util.List;

/**
 * How long a job of one kind takes in this house.
 *
 * @param median the middle of the past jobs, or the default
 * @param lowerQuartile a quarter of the past jobs were shorter; equal to the default while there are too few
 * @param upperQuartile a quarter were longer; equal to the default while there are too few
 * @param jobs how many past jobs there are
 * @param fromOwnJobs whether the figures come from them
 */
public record TimeEstimate(
        Duration median, Duration lowerQuartile, Duration upperQuartile, int jobs, boolean fromOwnJobs) {
    /** From this many past jobs on, the house's own figures are used. */
    public static final int ENOUGH_JOBS = 10;

    /**
     * Estimates from the durations of finished jobs of the same kind.
     *
     * @param past durations in any order, none negative
     * @param otherwise taken until there are ten
     */
    public static TimeEstimate of(List<Duration> past, Duration otherwise) {
        if (past.stream().anyMatch(Duration::isNegative)) {
            throw new IllegalArgumentException("a job does not take less than no time");
        }
        if (past.size() < ENOUGH_JOBS) {
            return new TimeEstimate(otherwise, otherwise, otherwise, past.size(), false);
        }
        List<Duration> sorted = past.stream().sorted().toList();
        return new TimeEstimate(
                quantile(sorted, 0.5), quantile(sorted, 0.25), quantile(sorted, 0.75), past.size(), true);
    }

    /** Interpolates between the two nearest jobs at position (n - 1) p: Hyndman and Fan 1996, type 7. */
    private static Duration quantile(List<Duration> sorted, double p) {
        double position = (sorted.size() - 1) * p;
        int below = (int) position;
        int above = Math.min(below + 1, sorted.size() - 1);
        long from = sorted.get(below).toMillis();
        long to = sorted.get(above).toMillis();
        return Duration.ofMillis(Math.round(from + (to - from) * (position - below)));
    }

    /** Returns the estimate in one line. */
    public String inWords() {
        return fromOwnJobs
                ? "about " + minutes(median) + " min; half of " + jobs + " jobs took " + minutes(lowerQuartile) + " to "
                        + minutes(upperQuartile) + " min"
                : "about " + minutes(median) + " min (default until there are " + ENOUGH_JOBS + " jobs, " + jobs
                        + " so far)";
    }

    private static long minutes(Duration duration) {
        return Math.round(duration.toSeconds() / 60.0);
    }
}
