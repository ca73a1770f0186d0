package dev.lapwing.fleet;

/**
 * A depot as it is sent to be added or changed.
 *
 * @param zone IANA name of its time zone
 * @param season first and last day of its season
 * @param deskMail address of the return desk, or null
 */
record DepotRequest(String code, String name, String zone, SeasonDays season, String deskMail) {
    /** A season by its first and last day, each MM-dd; it may cross New Year. */
    record SeasonDays(String opens, String closes) {}

    DepotRequest withCode(String other) {
        return new DepotRequest(other, name, zone, season, deskMail);
    }
}
