package dev.lapwing.fleet;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Answers units together with what other areas add to them. */
@ApplicationScoped
class UnitAnswers {
    @Inject
    @All
    List<UnitFacet> facets;

    @Inject
    Clock clock;

    UnitAnswer of(Unit unit) {
        return of(List.of(unit)).get(0);
    }

    /** Answers units in their order; what is added is read for all of them at once. */
    List<UnitAnswer> of(List<Unit> units) {
        Instant now = clock.instant();
        Map<UUID, Map<String, Object>> added =
                facetsOf(units.stream().map(unit -> unit.id).toList());
        return units.stream()
                .map(unit -> UnitAnswer.of(unit, now, added.getOrDefault(unit.id, Map.of())))
                .toList();
    }

    private Map<UUID, Map<String, Object>> facetsOf(List<UUID> unitIds) {
        Map<UUID, Map<String, Object>> all = new HashMap<>();
        for (UnitFacet facet : facets) {
            facet.valuesOf(unitIds)
                    .forEach((id, value) ->
                            all.computeIfAbsent(id, none -> new HashMap<>()).put(facet.name(), value));
        }
        return all;
    }
}
