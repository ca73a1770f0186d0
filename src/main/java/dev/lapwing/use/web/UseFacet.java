package dev.lapwing.use.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.UnitFacet;
import dev.lapwing.use.application.ReadingUse;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
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
    ReadingUse reading;

    @Inject
    Clock clock;

    @Override
    public String name() {
        return "use";
    }

    @Override
    public Map<UUID, Object> valuesOf(Collection<UUID> unitIds) {
        Map<UUID, Object> values = new HashMap<>();
        reading.of(unitIds, clock.instant()).forEach((unit, use) -> values.put(unit, answer(use)));
        return values;
    }

    private static Use answer(ReadingUse.Use read) {
        UseInForce use = read.inForce();
        SetPattern set = read.set();
        String doubt = use.pattern() == UsePattern.UNKNOWN ? "; cared for as full-time" : "";
        SetUse setUse = set == null ? null : new SetUse(set.pattern.word(), set.reason, set.setBy, set.setUntil);
        return new Use(use.pattern().caredForAs().word(), use.why() + doubt, use.since(), setUse);
    }
}
