package dev.lapwing.fleet;

import dev.lapwing.platform.Worded;
import dev.lapwing.web.Form.Choice;
import dev.lapwing.web.Form.Input;
import dev.lapwing.web.Typed;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The fields of a unit on forms: named as the API names them, so that wrong ones are found. */
final class UnitForms {
    private static final String OPENS = "season.opens";
    private static final String CLOSES = "season.closes";

    private UnitForms() {}

    /** Returns the fields of the unit itself. */
    static List<Input> ofUnit(List<Depot> depots) {
        List<Choice> yards =
                depots.stream().map(depot -> new Choice(depot.code, depot.name)).toList();
        return List.of(
                Input.text("vin", "VIN", null),
                Input.select("kind", "Kind", words(UnitKind.values()), null),
                Input.select("depot", "Depot", yards, "Its open work moves with it"),
                Input.text("lengthMetres", "Length, metres", null),
                Input.text("heightMetres", "Travel height, metres", "The highest point on the road"),
                Input.select("storage", "Stands", words(Storage.values()), "Between rentals"),
                Input.text(OPENS, "Own season opens", "Month and day such as 04-01; both empty: the depot's season"),
                Input.text(CLOSES, "Own season closes", null));
    }

    /** Returns the fields of a roof, without the day it was laid. */
    static List<Input> ofRoof() {
        return List.of(
                Input.select("roof.surface", "Surface", words(Surface.values()), null),
                Input.select("roof.footing", "Footing", words(Footing.values()), "Unknown counts as no-walk"),
                Input.text("roof.membraneSystem", "Membrane system", "As its maker names it"),
                Input.text("roof.confirmedBy", "Confirmed by", null),
                Input.date("roof.confirmedOn", "Confirmed on", null),
                Input.text("roof.sealant", "Sealant", null));
    }

    private static <E extends Enum<E> & Worded> List<Choice> words(E[] constants) {
        return Choice.of(Stream.of(constants).map(Worded::word).toList());
    }

    /** Returns what is known of a unit, as its form shows it. */
    static Map<String, String> values(Unit unit) {
        Map<String, String> values = new HashMap<>(UnitSnapshot.of(unit).facts());
        values.put(OPENS, unit.seasonOpens);
        values.put(CLOSES, unit.seasonCloses);
        return values;
    }

    /** Returns what was typed for a unit. */
    static UnitRequest unit(Typed typed, String number) {
        return new UnitRequest(
                number,
                typed.text("vin"),
                typed.text("kind"),
                typed.text("depot"),
                typed.number("lengthMetres"),
                typed.number("heightMetres"),
                roof(typed),
                typed.text("storage"),
                null,
                new DepotRequest.SeasonDays(typed.text(OPENS), typed.text(CLOSES)));
    }

    /** Returns what was typed for a roof. */
    static UnitRequest.RoofRequest roof(Typed typed) {
        return new UnitRequest.RoofRequest(
                typed.text("roof.surface"),
                typed.text("roof.footing"),
                typed.text("roof.membraneSystem"),
                typed.text("roof.confirmedBy"),
                typed.date("roof.confirmedOn"),
                typed.text("roof.sealant"),
                typed.date("roof.installedOn"));
    }
}
