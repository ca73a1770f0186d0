package dev.lapwing.jobs.domain.sealant;

import java.util.Objects;

/**
 * A coordinator's word that stands in for a recorded confirmation.
 *
 * @param coordinator name of the coordinator who overrules
 * @param system the membrane system as confirmed
 * @param source where the confirmation comes from, such as the dealer's name and the day of the call
 */
public record Overrule(String coordinator, String system, String source) {
    public Overrule {
        if (Objects.toString(coordinator, "").isBlank()
                || Objects.toString(system, "").isBlank()
                || Objects.toString(source, "").isBlank()) {
            throw new IllegalArgumentException("overruling needs the coordinator's name, the system and the source");
        }
    }
}
