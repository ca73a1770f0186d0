package dev.lapwing.fleet;

/**
 * A depot was added or changed. Told inside the transaction, so that an area for which it makes no sense can refuse it.
 *
 * @param code the depot
 * @param seasonOpens first day of its season, MM-dd
 * @param seasonCloses last day of its season, MM-dd
 * @param datesChanged whether its season or its time zone is another than before; false for a new depot
 */
public record DepotSaved(String code, String seasonOpens, String seasonCloses, boolean datesChanged) {}
