package dev.lapwing.use.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.UnitFacet;
import dev.lapwing.use.domain.PatternOverride;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.Judgement;
import dev.lapwing.use.storage.PastPattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Adds to a unit how it is used. */
@ApplicationScoped
class UseFacet implements UnitFacet {
    private static final UseInForce NOT_JUDGED = new UseInForce(UsePattern.UNKNOWN, null, "no rental log read yet");

    /**
     * The pattern that counts for a unit.
     *
     * @param pattern full-time or seasonal; a unit of unknown use is cared for as full-time
     * @param reason where the pattern comes from
     * @param since first day on which care by this pattern applied, or null when it always did
     * @param set what the coordinator set, or null; it may have ended
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Use(String pattern, String reason, LocalDate since, SetUse set) {}

    /** A pattern as it was set, with its last day, or null when it has none. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record SetUse(String pattern, String reason, String by, LocalDate until) {}

    @Inject
    Clock clock;

    @Override
    public String name() {
        return "use";
    }

    @Override
    public Map<UUID, Object> valuesOf(Collection<UUID> unitIds) {
        if (unitIds.isEmpty()) {
            return Map.of();
        }
        Instant now = clock.instant();
        Map<UUID, UseInForce> judged =
                Judgement.of(unitIds).stream().collect(Collectors.toMap(Judgement::unitId, Judgement::use));
        Map<UUID, SetPattern> set =
                SetPattern.of(unitIds).stream().collect(Collectors.toMap(one -> one.unitId, Function.identity()));
        Map<UUID, List<PatternOverride>> past = PastPattern.of(unitIds).stream()
                .collect(Collectors.groupingBy(
                        one -> one.unitId, Collectors.mapping(PastPattern::override, Collectors.toList())));
        Map<UUID, Object> values = new HashMap<>();
        for (Unit unit : Unit.<Unit>list("from Unit u join fetch u.depot where u.id in ?1", unitIds)) {
            UseInForce derived = judged.getOrDefault(unit.id, NOT_JUDGED);
            List<PatternOverride> overrides = new ArrayList<>(past.getOrDefault(unit.id, List.of()));
            SetPattern one = set.get(unit.id);
            if (one != null) {
                overrides.add(one.override(unit.depot.zoneId()));
            }
            UseInForce use = PatternOverride.inForce(derived, overrides, unit.depot.dateAt(now));
            values.put(unit.id, use(use, one));
        }
        return values;
    }

    private static Use use(UseInForce use, SetPattern set) {
        String doubt = use.pattern() == UsePattern.UNKNOWN ? "; cared for as full-time" : "";
        SetUse setUse = set == null ? null : new SetUse(set.pattern.word(), set.reason, set.setBy, set.setUntil);
        return new Use(use.pattern().caredForAs().word(), use.why() + doubt, use.since(), setUse);
    }
}
