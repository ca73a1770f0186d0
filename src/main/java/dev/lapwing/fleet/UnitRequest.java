package dev.lapwing.fleet;

import java.math.BigDecimal;
import java.time.LocalDate;

/**
 * A unit as it is sent to be added or changed. Words are checked later, so that all errors are told at once.
 *
 * @param usePattern the pattern to set, or null to leave it as it is
 * @param season a season of its own, one without days for the depot's, or null to leave it as it is
 */
record UnitRequest(
        String number,
        String vin,
        String kind,
        String depot,
        BigDecimal lengthMetres,
        BigDecimal heightMetres,
        RoofRequest roof,
        String storage,
        UsePatternRequest usePattern,
        DepotRequest.SeasonDays season) {

    record RoofRequest(
            String surface,
            String footing,
            String membraneSystem,
            String confirmedBy,
            LocalDate confirmedOn,
            String sealant,
            LocalDate installedOn) {}

    record UsePatternRequest(String pattern, String reason, LocalDate until) {}

    UnitRequest withNumber(String other) {
        return new UnitRequest(other, vin, kind, depot, lengthMetres, heightMetres, roof, storage, usePattern, season);
    }
}
