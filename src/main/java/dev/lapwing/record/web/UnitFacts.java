package dev.lapwing.record.web;

import dev.lapwing.fleet.Roof;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.Vin;
import dev.lapwing.use.domain.UseInForce;
import dev.lapwing.use.domain.UsePattern;
import dev.lapwing.web.Dates;
import java.math.BigDecimal;
import java.time.MonthDay;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is known of a unit and its roof, in words. */
final class UnitFacts {
    /** One fact with its name. */
    record Fact(String name, String value) {}

    private static final DateTimeFormatter MONTH_DAY = DateTimeFormatter.ofPattern("d MMM", Locale.ENGLISH);
    private static final String UNKNOWN = "not recorded";

    private UnitFacts() {}

    static List<Fact> of(Unit unit, UseInForce use) {
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
        facts.add(new Fact("Use", use(use)));
        facts.add(new Fact("Season", season(unit)));
        facts.add(new Fact("In service since", Dates.day(unit.inServiceFrom)));
        if (unit.awaySince != null) {
            facts.add(new Fact("Was away since", Dates.day(unit.awaySince)));
        }
        if (unit.outOfServiceOn != null) {
            facts.add(new Fact(unit.sold ? "Sold on" : "Out of service on", left(unit)));
        }
        return facts;
    }

    private static String left(Unit unit) {
        String why = unit.outOfServiceWhy == null ? "" : ": " + unit.outOfServiceWhy;
        return Dates.day(unit.outOfServiceOn) + why;
    }

    private static String use(UseInForce use) {
        String since = use.since() == null ? "" : " since " + Dates.day(use.since());
        String doubt = use.pattern() == UsePattern.UNKNOWN ? ", cared for as full-time" : "";
        return use.pattern().word() + since + doubt + " (" + use.why() + ")";
    }

    private static String season(Unit unit) {
        boolean own = unit.seasonOpens != null;
        MonthDay opens = own ? MonthDay.parse("--" + unit.seasonOpens) : unit.depot.opens();
        MonthDay closes = own ? MonthDay.parse("--" + unit.seasonCloses) : unit.depot.closes();
        return MONTH_DAY.format(opens) + " to " + MONTH_DAY.format(closes) + (own ? ", its own" : ", the depot's");
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
