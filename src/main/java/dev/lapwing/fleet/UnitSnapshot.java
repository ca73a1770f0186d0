package dev.lapwing.fleet;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * What is known of a unit at one moment.
 *
 * @param facts the fields as the API names them, in order; a null value is one that is not recorded
 * @param season the season that counts for it, its own or the depot's
 */
record UnitSnapshot(Map<String, String> facts, String season) {
    static UnitSnapshot of(Unit unit) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("vin", unit.vin);
        facts.put("kind", unit.kind.word());
        facts.put("depot", unit.depot.code);
        facts.put("lengthMetres", plain(unit.lengthMetres));
        facts.put("heightMetres", plain(unit.heightMetres));
        addRoof(unit.roof, facts);
        facts.put("storage", unit.storage.word());
        String own = unit.seasonOpens == null ? null : unit.seasonOpens + " to " + unit.seasonCloses;
        facts.put("season", own);
        facts.put("inServiceFrom", text(unit.inServiceFrom));
        facts.put("awaySince", text(unit.awaySince));
        facts.put("outOfServiceOn", text(unit.outOfServiceOn));
        facts.put("sold", unit.sold ? "yes" : null);
        facts.put("outOfServiceWhy", unit.outOfServiceWhy);
        return new UnitSnapshot(facts, own == null ? unit.depot.season() : own);
    }

    private static void addRoof(Roof roof, Map<String, String> facts) {
        facts.put("roof.surface", roof.surface.word());
        facts.put("roof.footing", roof.footing.word());
        facts.put("roof.membraneSystem", roof.membraneSystem);
        facts.put("roof.confirmedBy", roof.confirmedBy);
        facts.put("roof.confirmedOn", text(roof.confirmedOn));
        facts.put("roof.sealant", roof.sealant);
        facts.put("roof.installedOn", text(roof.installedOn));
    }

    private static String plain(BigDecimal metres) {
        return metres.stripTrailingZeros().toPlainString();
    }

    private static String text(Object value) {
        return Objects.toString(value, null);
    }
}
