package dev.lapwing.alerts.domain;

import java.time.Duration;

/**
 * When a mail that did not go is tried again, and when it is given up.
 *
 * @param firstPause pause after the first attempt; doubles with each further one
 * @param longestPause the pause never grows beyond this, jitter aside
 * @param outagePause the same while the server cannot be reached, so that mails go soon after it is back
 * @param refusals after so many refusals a mail is given up; an unreachable server refuses nothing
 */
public record RetryRule(Duration firstPause, Duration longestPause, Duration outagePause, int refusals) {
    private static final int MOST_DOUBLINGS = 30;
    private static final double LEAST_SHARE = 0.75;
    private static final double SPREAD = 0.5;

    /** Returns whether a mail that failed like this, after so many refusals in all, is given up. */
    public boolean givesUp(Failure failure, int refusedSoFar) {
        return failure == Failure.PERMANENT || failure == Failure.PASSING && refusedSoFar >= refusals;
    }

    /**
     * Returns how long to wait, between three and five quarters of the nominal pause.
     *
     * @param attempts attempts made so far, from 1
     * @param chance from 0 to 1, spreads the next attempts of mails that failed together
     */
    public Duration pause(Failure failure, int attempts, double chance) {
        Duration longest = failure == Failure.UNREACHABLE ? shorter(outagePause, longestPause) : longestPause;
        int doublings = Math.min(Math.max(attempts, 1) - 1, MOST_DOUBLINGS);
        Duration nominal = shorter(firstPause.multipliedBy(1L << doublings), longest);
        return Duration.ofMillis(Math.round(nominal.toMillis() * (LEAST_SHARE + SPREAD * chance)));
    }

    private static Duration shorter(Duration one, Duration other) {
        return one.compareTo(other) < 0 ? one : other;
    }
}
