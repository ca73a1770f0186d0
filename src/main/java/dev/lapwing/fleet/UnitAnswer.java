package dev.lapwing.fleet;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.platform.FieldError;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A unit as it is answered.
 *
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

    static UnitAnswer of(Unit unit, Map<String, Object> facets) {
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
                warnings,
                facets);
    }
}
