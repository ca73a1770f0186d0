package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.FieldError;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Checks a plan as the coordinator edited it. */
public final class PlanCheck {
    private static final double LONGEST_METRES = 30;
    private static final double WIDEST_METRES = 5;
    private static final int MOST_OBJECTS = 200;
    private static final int LONGEST_NAME = 60;
    /** A millimetre, so that rounding of coordinates does not push an object off its roof. */
    private static final double TOLERANCE_METRES = 0.001;

    private final double length;
    private final double width;
    private final List<FieldError> errors = new ArrayList<>();

    private PlanCheck(double length, double width) {
        this.length = length;
        this.width = width;
    }

    /** Returns everything that is wrong, objects by their place in the list, such as {@code objects[2].x}. */
    public static List<FieldError> of(double lengthMetres, double widthMetres, List<PlacedObject> objects) {
        PlanCheck check = new PlanCheck(lengthMetres, widthMetres);
        check.size("lengthMetres", lengthMetres, LONGEST_METRES);
        check.size("widthMetres", widthMetres, WIDEST_METRES);
        if (objects.size() > MOST_OBJECTS) {
            check.refuse("objects", "has at most " + MOST_OBJECTS);
        } else if (check.errors.isEmpty()) {
            check.objects(objects);
        }
        return check.errors;
    }

    private void size(String field, double metres, double most) {
        if (!(metres > 0 && metres <= most)) {
            refuse(field, "is more than 0 and at most " + (int) most + " m");
        }
    }

    private void objects(List<PlacedObject> objects) {
        Set<String> ids = new HashSet<>();
        for (int i = 0; i < objects.size(); i++) {
            PlacedObject object = objects.get(i);
            String at = "objects[" + i + "].";
            if (object.id() == null || object.id().isBlank() || !ids.add(object.id())) {
                refuse(at + "id", "is needed and comes once");
            }
            if (object.type() == null) {
                refuse(at + "type", "is needed");
            }
            if (object.name() == null
                    || object.name().isBlank()
                    || object.name().length() > LONGEST_NAME) {
                refuse(at + "name", "is needed, with at most " + LONGEST_NAME + " characters");
            }
            extent(at, "x", "lengthMetres", object.x(), object.lengthMetres(), length);
            extent(at, "y", "widthMetres", object.y(), object.widthMetres(), width);
        }
    }

    private void extent(String at, String place, String size, double centre, double metres, double roof) {
        if (!Point.isShare(centre)) {
            refuse(at + place, "is from 0 to 1");
        } else if (!(metres >= 0 && metres <= roof + TOLERANCE_METRES)) {
            refuse(at + size, "is 0 or more and no more than the roof");
        } else if (centre * roof - metres / 2 < -TOLERANCE_METRES
                || centre * roof + metres / 2 > roof + TOLERANCE_METRES) {
            refuse(at + place, "puts part of it beyond the roof");
        }
    }

    private void refuse(String field, String message) {
        errors.add(new FieldError(field, message));
    }
}
