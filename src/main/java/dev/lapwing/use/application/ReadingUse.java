package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.Judgement;
import dev.lapwing.use.storage.PastPattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Reads how units are used: what is set for them, or else what the log was last judged to say. */
@ApplicationScoped
public class ReadingUse {
    private static final UseInForce NOT_JUDGED = new UseInForce(UsePattern.UNKNOWN, null, "no rental log read yet");

    /**
     * How a unit is used.
     *
     * @param inForce the pattern that counts
     * @param set what the coordinator set, or null; it may have ended
     */
    public record Use(UseInForce inForce, SetPattern set) {}

    /** Returns the use of each unit at an instant, read for all of them together. */
    public Map<UUID, Use> of(Collection<UUID> unitIds, Instant now) {
        if (unitIds.isEmpty()) {
            return Map.of();
        }
        Map<UUID, UseInForce> judged =
                Judgement.of(unitIds).stream().collect(Collectors.toMap(Judgement::unitId, Judgement::use));
        Map<UUID, SetPattern> set =
                SetPattern.of(unitIds).stream().collect(Collectors.toMap(one -> one.unitId, Function.identity()));
        Map<UUID, List<PatternOverride>> past = PastPattern.of(unitIds).stream()
                .collect(Collectors.groupingBy(
                        one -> one.unitId, Collectors.mapping(PastPattern::override, Collectors.toList())));
        Map<UUID, Use> uses = new HashMap<>();
        for (Unit unit : Unit.<Unit>list("from Unit u join fetch u.depot where u.id in ?1", unitIds)) {
            List<PatternOverride> overrides = new ArrayList<>(past.getOrDefault(unit.id, List.of()));
            SetPattern one = set.get(unit.id);
            if (one != null) {
                overrides.add(one.override(unit.depot.zoneId()));
            }
            UseInForce derived = judged.getOrDefault(unit.id, NOT_JUDGED);
            uses.put(unit.id, new Use(PatternOverride.inForce(derived, overrides, unit.depot.dateAt(now)), one));
        }
        return uses;
    }
}
