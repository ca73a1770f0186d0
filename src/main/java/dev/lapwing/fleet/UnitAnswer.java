package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.platform.FieldError;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A unit as it is answered.
 *
 * @param season its own season, or null when the depot's counts
 * @param warnings what looks wrong and was taken all the same
 * @param facets what other areas add, by field name
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record UnitAnswer(
        String number,
        String vin,
        UnitKind kind,
        String depot,
        BigDecimal lengthMetres,
        BigDecimal heightMetres,
        RoofAnswer roof,
        Storage storage,
        DepotRequest.SeasonDays season,
        ServiceAnswer service,
        List<FieldError> warnings,
        @JsonAnyGetter Map<String, Object> facets) {

    @JsonInclude(JsonInclude.Include.NON_NULL)
    record RoofAnswer(
            Surface surface,
            Footing footing,
            String membraneSystem,
            String confirmedBy,
            LocalDate confirmedOn,
            String sealant,
            LocalDate installedOn) {

        static RoofAnswer of(Roof roof) {
            return new RoofAnswer(
                    roof.surface,
                    roof.footing,
                    roof.membraneSystem,
                    roof.confirmedBy,
                    roof.confirmedOn,
                    roof.sealant,
                    roof.installedOn);
        }
    }

    /** When it is in service: its state today, and the days it came, had left before, and leaves. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record ServiceAnswer(ServiceState state, LocalDate from, LocalDate awaySince, LocalDate until, String reason) {
        static ServiceAnswer of(Unit unit, LocalDate today) {
            return new ServiceAnswer(
                    unit.serviceState(today),
                    unit.inServiceFrom,
                    unit.awaySince,
                    unit.outOfServiceOn,
                    unit.outOfServiceWhy);
        }
    }

    static UnitAnswer of(Unit unit, Instant now, Map<String, Object> facets) {
        List<FieldError> warnings = Optional.ofNullable(unit.vin)
                .flatMap(Vin::warning)
                .map(message -> List.of(new FieldError("vin", message)))
                .orElse(List.of());
        return new UnitAnswer(
                unit.number,
                unit.vin,
                unit.kind,
                unit.depot.code,
                unit.lengthMetres.stripTrailingZeros(),
                unit.heightMetres.stripTrailingZeros(),
                RoofAnswer.of(unit.roof),
                unit.storage,
                unit.seasonOpens == null ? null : new DepotRequest.SeasonDays(unit.seasonOpens, unit.seasonCloses),
                ServiceAnswer.of(unit, unit.depot.dateAt(now)),
                warnings,
                facets);
    }
}
