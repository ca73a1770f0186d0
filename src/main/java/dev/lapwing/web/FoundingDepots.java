package dev.lapwing.web;

import dev.lapwing.platform.FieldErrors;

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

    /** Notes what is wrong with a depot, by the names of its fields. */
    void examine(NewDepot depot, FieldErrors errors);

    /** Adds a depot that was examined; returns its code. */
    String found(NewDepot depot);
}
