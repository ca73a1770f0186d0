package dev.lapwing.jobs.application;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.roof.ObjectType;
import dev.lapwing.jobs.domain.roof.PlacedObject;
import dev.lapwing.platform.FieldErrors;
import java.util.ArrayList;
import java.util.List;

/**
 * A roof plan as the coordinator sends it.
 *
 * @param version the version that was edited, 0 for the plan of the unit's kind
 * @param widthMetres width of the roof
 * @param objects what is on it; edges are left out, as they follow from the size
 */
public record PlanEntry(Integer version, Double widthMetres, List<ObjectEntry> objects) {
    private static final int LONGEST_ID = 60;

    /** One object as it is sent; x and y are its centre, from 0 to 1. */
    public record ObjectEntry(
            String id, String type, String name, Double x, Double y, Double lengthMetres, Double widthMetres) {}

    /** Reads the objects in their order; a value that is missing or no word of the list is noted by its place. */
    List<PlacedObject> read(FieldErrors errors) {
        errors.present(version, "version");
        errors.present(widthMetres, "widthMetres");
        List<PlacedObject> read = new ArrayList<>();
        if (errors.present(objects, "objects")) {
            for (int i = 0; i < objects.size(); i++) {
                read.add(read(objects.get(i), "objects[" + i + "]", errors));
            }
        }
        return read;
    }

    private static PlacedObject read(ObjectEntry object, String at, FieldErrors errors) {
        if (!errors.present(object, at)) {
            return null;
        }
        errors.atMost(object.id, LONGEST_ID, at + ".id");
        var type = Words.read(ObjectType.class, object.type);
        errors.check(type.isPresent(), at + ".type", "is one of " + Words.list(ObjectType.class));
        return new PlacedObject(
                object.id,
                type.orElse(null),
                object.name == null ? null : object.name.strip(),
                number(object.x, at + ".x", errors),
                number(object.y, at + ".y", errors),
                number(object.lengthMetres, at + ".lengthMetres", errors),
                number(object.widthMetres, at + ".widthMetres", errors));
    }

    private static double number(Double value, String field, FieldErrors errors) {
        return errors.present(value, field) ? value : 0;
    }
}
