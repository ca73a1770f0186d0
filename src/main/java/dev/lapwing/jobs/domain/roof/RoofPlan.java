package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.measure.Length;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The top view of one unit's roof.
 *
 * @param lengthMetres along the unit
 * @param widthMetres across the unit
 * @param objects what is on it, edges included
 */
public record RoofPlan(double lengthMetres, double widthMetres, List<PlacedObject> objects) {
    /** An object farther away than this does not name the place of a finding. */
    private static final double NEAR_METRES = 0.3;

    /**
     * Keeps a plan that {@link PlanCheck} finds nothing wrong with.
     *
     * @throws IllegalArgumentException when it does
     */
    public RoofPlan {
        objects = List.copyOf(objects);
        List<FieldError> errors = PlanCheck.of(lengthMetres, widthMetres, objects);
        if (!errors.isEmpty()) {
            throw new IllegalArgumentException(
                    errors.stream().map(e -> e.field() + ": " + e.message()).collect(Collectors.joining("; ")));
        }
    }

    /** Names the place of a tap. The first third ends before x = 1/3, the middle one before 2/3; so does the width. */
    public Zone zoneAt(Point point) {
        PlacedObject near = objects.stream()
                .filter(object -> distance(object, point) <= NEAR_METRES)
                .min(Comparator.<PlacedObject>comparingDouble(object -> distance(object, point))
                        .thenComparingDouble(PlacedObject::area))
                .orElse(null);
        return new Zone(Zone.Along.values()[third(point.x())], Zone.Across.values()[third(point.y())], near);
    }

    private double distance(PlacedObject object, Point point) {
        return object.distance(point, lengthMetres, widthMetres);
    }

    private static int third(double share) {
        return share < 1.0 / 3 ? 0 : share < 2.0 / 3 ? 1 : 2;
    }

    /** Returns the sealant of the whole roof: around what passes through it, along seams, mouldings and edges. */
    public Length sealantRun() {
        return Length.ofMetres(
                objects.stream().mapToDouble(PlacedObject::sealantMetres).sum());
    }
}
