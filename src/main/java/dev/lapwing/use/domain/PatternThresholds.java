package dev.lapwing.use.domain;

/**
 * When a unit counts as seasonal. The pairs lie apart, so that a unit near a border does not flip back and forth; between
 * them it stays what it was.
 *
 * @param trailingDays days looked back on
 * @param knownDays fewest days of log to judge by
 * @param seasonalShareOut at most this share of days out to become seasonal, 0 to 1
 * @param fullTimeShareOut above this share a unit becomes full-time
 * @param seasonalStoreDays at least so many days in a row without a rental to become seasonal
 * @param fullTimeStoreDays with fewer than so many it becomes full-time
 */
public record PatternThresholds(
        int trailingDays,
        int knownDays,
        double seasonalShareOut,
        double fullTimeShareOut,
        int seasonalStoreDays,
        int fullTimeStoreDays) {
    /** Project defaults, no source; the reasons are in the decision on use patterns. */
    public static final PatternThresholds DEFAULT = new PatternThresholds(365, 90, 0.60, 0.70, 90, 60);

    public PatternThresholds {
        require(knownDays >= 1 && knownDays <= trailingDays, "known days must be 1 to trailing days");
        require(seasonalShareOut >= 0 && fullTimeShareOut <= 1, "shares must be between 0 and 1");
        require(seasonalShareOut < fullTimeShareOut, "the seasonal share must be below the full-time share");
        require(fullTimeStoreDays >= 1, "store days must be 1 or more");
        require(fullTimeStoreDays < seasonalStoreDays, "full-time store days must be below seasonal store days");
        require(seasonalStoreDays <= trailingDays, "seasonal store days must fit into the trailing days");
    }

    private static void require(boolean holds, String problem) {
        if (!holds) {
            throw new IllegalArgumentException("use pattern: " + problem);
        }
    }
}
