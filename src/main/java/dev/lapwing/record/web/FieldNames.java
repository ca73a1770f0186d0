package dev.lapwing.record.web;

import java.util.Map;

/** What people call the fields of a unit. */
final class FieldNames {
    private static final Map<String, String> NAMES = Map.ofEntries(
            Map.entry("vin", "VIN"),
            Map.entry("kind", "Kind"),
            Map.entry("depot", "Depot"),
            Map.entry("lengthMetres", "Length, m"),
            Map.entry("heightMetres", "Travel height, m"),
            Map.entry("roof.surface", "Surface"),
            Map.entry("roof.footing", "Footing"),
            Map.entry("roof.membraneSystem", "Membrane system"),
            Map.entry("roof.confirmedBy", "Confirmed by"),
            Map.entry("roof.confirmedOn", "Confirmed on"),
            Map.entry("roof.sealant", "Sealant"),
            Map.entry("roof.installedOn", "Laid on"),
            Map.entry("storage", "Stands"),
            Map.entry("season", "Own season"),
            Map.entry("inServiceFrom", "In service from"),
            Map.entry("awaySince", "Was away since"),
            Map.entry("outOfServiceOn", "Out of service on"),
            Map.entry("outOfServiceWhy", "Out of service because"),
            Map.entry("sold", "Sold"),
            Map.entry("usePattern", "Pattern set"));

    private FieldNames() {}

    /** Returns the name of a field, or the field itself when it has none. */
    static String of(String field) {
        return NAMES.getOrDefault(field, field);
    }
}
