package dev.lapwing.record.web;

import dev.lapwing.fleet.Roof;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.Vin;
import dev.lapwing.web.Dates;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/** What is known of a unit and its roof, in words. */
final class UnitFacts {
    /** One fact with its name. */
    record Fact(String name, String value) {}

    private static final String UNKNOWN = "not recorded";

    private UnitFacts() {}

    static List<Fact> of(Unit unit) {
        List<Fact> facts = new ArrayList<>();
        Roof roof = unit.roof;
        facts.add(new Fact("Surface", roof.surface.word()));
        facts.add(new Fact("Footing", footing(roof)));
        facts.add(new Fact("Membrane system", orUnknown(roof.membraneSystem)));
        facts.add(new Fact("Confirmed", confirmed(roof)));
        facts.add(new Fact("Sealant", orUnknown(roof.sealant)));
        facts.add(new Fact("Laid on", roof.installedOn == null ? UNKNOWN : Dates.day(roof.installedOn)));
        facts.add(new Fact("Length", metres(unit.lengthMetres)));
        facts.add(new Fact("Travel height", metres(unit.heightMetres)));
        facts.add(new Fact("Stands", unit.storage.word()));
        facts.add(new Fact("VIN", orUnknown(unit.vin)));
        if (unit.vin != null) {
            Vin.warning(unit.vin).ifPresent(warning -> facts.add(new Fact("Note on the VIN", warning)));
        }
        facts.add(new Fact("In the fleet since", Dates.day(unit.inServiceFrom)));
        if (unit.outOfServiceOn != null) {
            facts.add(new Fact("Out of service on", Dates.day(unit.outOfServiceOn)));
        }
        return facts;
    }

    static String metres(BigDecimal metres) {
        return metres.stripTrailingZeros().toPlainString() + " m";
    }

    private static String footing(Roof roof) {
        return roof.bearsAPerson() ? roof.footing.word() : roof.footing.word() + ": nobody steps on it";
    }

    private static String confirmed(Roof roof) {
        if (roof.confirmedBy == null) {
            return "by nobody yet";
        }
        return "by " + roof.confirmedBy + (roof.confirmedOn == null ? "" : " on " + Dates.day(roof.confirmedOn));
    }

    private static String orUnknown(String value) {
        return value == null ? UNKNOWN : value;
    }
}
