package dev.lapwing.jobs.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.domain.roof.PlacedObject;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.domain.roof.Zone;
import java.time.OffsetDateTime;
import java.util.List;

/**
 * The roof plan of a unit as it is answered, with all that is needed to name the place of a point without asking again.
 *
 * @param version 0 while it is the plan of the unit's kind
 * @param nearMetres an object up to so far from a point, measured from its side, is named with the field; of several the
 *     nearest, of equally near ones the one with the smallest area
 * @param zones the nine fields; a point belongs to the one with from ≤ share &lt; to, the last one ending with 1 included
 * @param objects what is on the roof, edges included
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
record RoofPlanAnswer(
        String unit,
        int version,
        double lengthMetres,
        double widthMetres,
        OffsetDateTime savedAt,
        String savedBy,
        double nearMetres,
        List<Field> zones,
        List<Placed> objects) {

    /** One of the nine fields, by shares of the length and width. */
    record Field(String name, double xFrom, double xTo, double yFrom, double yTo) {}

    /** One object. */
    record Placed(String id, String type, String name, double x, double y, double lengthMetres, double widthMetres) {
        static Placed of(PlacedObject object) {
            return new Placed(
                    object.id(),
                    object.type().word(),
                    object.name(),
                    object.x(),
                    object.y(),
                    object.lengthMetres(),
                    object.widthMetres());
        }
    }

    static RoofPlanAnswer of(Unit unit, RoofPlans.Current current) {
        RoofPlan plan = current.plan();
        return new RoofPlanAnswer(
                unit.number,
                current.version(),
                plan.lengthMetres(),
                plan.widthMetres(),
                current.savedAt() == null
                        ? null
                        : current.savedAt().atZone(unit.depot.zoneId()).toOffsetDateTime(),
                current.savedBy(),
                RoofPlan.NEAR_METRES,
                Zone.fields().stream().map(RoofPlanAnswer::field).toList(),
                plan.objects().stream().map(Placed::of).toList());
    }

    private static Field field(Zone zone) {
        int along = zone.along().ordinal();
        int across = zone.across().ordinal();
        return new Field(zone.field(), along / 3.0, (along + 1) / 3.0, across / 3.0, (across + 1) / 3.0);
    }
}
