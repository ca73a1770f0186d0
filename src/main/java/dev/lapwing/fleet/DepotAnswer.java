package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonInclude;

/** A depot as it is answered. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record DepotAnswer(String code, String name, String zone, DepotRequest.SeasonDays season, String deskMail) {
    static DepotAnswer of(Depot depot) {
        var season = new DepotRequest.SeasonDays(depot.seasonOpens, depot.seasonCloses);
        return new DepotAnswer(depot.code, depot.name, depot.zone, season, depot.deskMail);
    }
}
