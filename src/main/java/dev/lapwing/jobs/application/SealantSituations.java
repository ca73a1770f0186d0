package dev.lapwing.jobs.application;

import dev.lapwing.fleet.Roof;
import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.sealant.Membrane;
import dev.lapwing.jobs.domain.sealant.Overrule;
import dev.lapwing.jobs.domain.sealant.Sealant;
import dev.lapwing.jobs.domain.sealant.SealantAnswer;
import dev.lapwing.jobs.domain.sealant.SealantGuard;
import dev.lapwing.jobs.storage.Chalking;
import dev.lapwing.jobs.storage.MembraneWord;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Knows what sealant work on a roof has to reckon with. */
@ApplicationScoped
class SealantSituations {
    /**
     * What is known of one roof.
     *
     * @param overrule the coordinator's word for the system, or null
     */
    record SealantSituation(SealantGuard guard, Overrule overrule) {
        SealantAnswer mayUse(Sealant sealant) {
            return guard.mayUse(sealant, overrule);
        }

        List<SealantAnswer> comesFirst() {
            return guard.comesFirst(overrule);
        }

        /** Returns the system as confirmed or vouched for, or null when nobody has done either. */
        String system() {
            if (guard.membrane().isConfirmed(guard.today())) {
                return guard.membrane().system();
            }
            return overrule == null ? null : overrule.system();
        }
    }

    SealantSituation of(Unit unit, Instant now) {
        return of(List.of(unit), now).get(unit.id);
    }

    /** Returns the situation of each unit, by its id. */
    Map<UUID, SealantSituation> of(Collection<Unit> units, Instant now) {
        Map<UUID, Unit> byId =
                units.stream().collect(Collectors.toMap(unit -> unit.id, Function.identity(), (one, same) -> one));
        List<UUID> chalking = Chalking.untreatedOf(byId.keySet());
        Map<UUID, Overrule> overrules = new HashMap<>();
        MembraneWord.overrulesOf(byId.keySet()).stream()
                .filter(word -> stillCounts(word, byId.get(word.unitId)))
                .forEach(word -> overrules.put(word.unitId, word.overrule()));
        Map<UUID, SealantSituation> situations = new HashMap<>();
        byId.forEach((id, unit) -> situations.put(
                id,
                new SealantSituation(
                        new SealantGuard(membrane(unit.roof), chalking.contains(id), unit.depot.dateAt(now)),
                        overrules.get(id))));
        return situations;
    }

    /** A word for a roof that was replaced since says nothing of the new one. */
    private static boolean stillCounts(MembraneWord word, Unit unit) {
        return unit.roof.installedOn == null || !unit.roof.installedOn.isAfter(word.givenOn);
    }

    private static Membrane membrane(Roof roof) {
        return new Membrane(roof.membraneSystem, roof.confirmedBy, roof.confirmedOn);
    }
}
