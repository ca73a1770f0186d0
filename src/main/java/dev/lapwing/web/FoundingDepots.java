package dev.lapwing.web;

/** Makes depots out of what a person typed. */
public interface FoundingDepots {
    /**
     * A depot as typed.
     *
     * @param zone IANA name of the time zone
     * @param opens first day of the season as MM-dd
     * @param closes last day of the season as MM-dd; may lie before the first, across New Year
     */
    record NewDepot(String code, String name, String zone, String opens, String closes) {}

    /**
     * Adds a depot and returns its code; refuses it with every wrong field named: code, name, zone, season.opens,
     * season.closes.
     */
    String found(NewDepot depot);
}
