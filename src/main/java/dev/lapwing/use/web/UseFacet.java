package dev.lapwing.use.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.UnitFacet;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** Adds to a unit how it is used. */
@ApplicationScoped
class UseFacet implements UnitFacet {
    /**
     * The pattern that counts for a unit.
     *
     * @param setBy who set it, or null when it comes from the rental log
     * @param until last day it counts, or null
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Use(String pattern, String reason, String setBy, LocalDate until) {}

    @Override
    public String name() {
        return "use";
    }

    @Override
    public Map<UUID, Object> valuesOf(Collection<UUID> unitIds) {
        Map<UUID, Object> values = new HashMap<>();
        for (UUID id : unitIds) {
            values.put(id, new Use("full-time", "not known yet, treated as full-time", null, null));
        }
        for (SetPattern set : SetPattern.of(unitIds)) {
            String word = set.pattern.equals("SEASONAL") ? "seasonal" : "full-time";
            values.put(set.unitId, new Use(word, set.reason, set.setBy, set.setUntil));
        }
        return values;
    }
}
