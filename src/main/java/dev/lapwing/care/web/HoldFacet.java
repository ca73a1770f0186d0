package dev.lapwing.care.web;

import dev.lapwing.care.storage.Hold;
import dev.lapwing.fleet.UnitFacet;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import java.util.UUID;

/** Adds to a unit the hold that keeps it in the yard. */
@ApplicationScoped
class HoldFacet implements UnitFacet {
    @Override
    public String name() {
        return "hold";
    }

    @Override
    public Map<UUID, Object> valuesOf(Collection<UUID> unitIds) {
        Map<UUID, Object> values = new HashMap<>();
        for (Hold hold : Hold.openOf(unitIds)) {
            values.putIfAbsent(hold.unit.id, HoldAnswer.of(hold));
        }
        return values;
    }
}
