package dev.lapwing.record.domain;

/**
 * Wilson's score interval for a proportion, without continuity correction. Source: NIST/SEMATECH e-Handbook, section
 * 7.2.4.1.
 *
 * @param lower lower limit, 0 to 1
 * @param upper upper limit, 0 to 1
 */
public record WilsonInterval(double lower, double upper) {
    /** Standard normal quantile of a two-sided 95 % interval. */
    public static final double Z_95 = 1.959964;

    /** Returns the 95 % interval of {@code successes} out of {@code n}. */
    public static WilsonInterval of(long successes, long n) {
        return of(successes, n, Z_95);
    }

    /**
     * Returns the interval of {@code successes} out of {@code n} for a normal quantile {@code z}; with no trial at all
     * it is 0 to 1.
     */
    public static WilsonInterval of(long successes, long n, double z) {
        if (n < 0 || successes < 0 || successes > n || !(z > 0)) {
            throw new IllegalArgumentException("no proportion: " + successes + " of " + n + ", z " + z);
        }
        if (n == 0) {
            return new WilsonInterval(0, 1);
        }
        double p = (double) successes / n;
        double square = z * z;
        double middle = p + square / (2 * n);
        double reach = z * Math.sqrt(p * (1 - p) / n + square / (4.0 * n * n));
        double scale = 1 + square / n;
        double lower = successes == 0 ? 0 : (middle - reach) / scale;
        double upper = successes == n ? 1 : (middle + reach) / scale;
        return new WilsonInterval(lower, upper);
    }
}
