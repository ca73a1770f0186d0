package dev.lapwing.care.web;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.fleet.Footing;
import dev.lapwing.fleet.Roof;
import java.util.ArrayList;
import java.util.List;

/** What to mind before anyone works on a roof. Common practice, no source; local rules and training come first. */
final class RoofCautions {
    private RoofCautions() {}

    static List<String> of(Roof roof, TaskKind kind) {
        List<String> cautions = new ArrayList<>();
        cautions.add(footing(roof.footing));
        cautions.add(
                "Set the ladder on firm, level ground and keep three points of contact; not in wind, rain or frost,"
                        + " and not alone.");
        cautions.add("Switch off and isolate what is mounted on the roof before you touch it.");
        if (kind == TaskKind.STRIKE_INSPECTION) {
            cautions.add("Expect torn edges and loose parts; look from the ladder before you put a hand on anything.");
        } else {
            cautions.add("Read the label of every cleaner and sealant and wear what it asks for; use only what the"
                    + " roof's maker allows.");
        }
        cautions.add("Local rules, and people qualified for work at height, come before this list. If in doubt, stop"
                + " and ask.");
        return cautions;
    }

    private static String footing(Footing footing) {
        return switch (footing) {
            case WALKABLE -> "Walkable roof: soft soles, spread the load, stay off the edges.";
            case NO_WALK -> "NO-WALK roof: it does not bear a person. Work from a ladder or platform only.";
            case UNKNOWN -> "Footing unknown: treat it as NO-WALK. Work from a ladder or platform only.";
        };
    }
}
