package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.measure.Length;
import java.util.ArrayList;
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
    public static final double NEAR_METRES = 0.3;

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

    /**
     * Makes the plan of a roof with its four edges; what is too large for it is cut to fit.
     *
     * @param objects what is on it; edges among them are left out, as they follow from the size
     */
    public static RoofPlan fitting(double lengthMetres, double widthMetres, List<PlacedObject> objects) {
        List<PlacedObject> all = new ArrayList<>(edges(lengthMetres, widthMetres));
        objects.stream()
                .filter(object -> object.type() != ObjectType.EDGE)
                .map(object -> object.fitted(lengthMetres, widthMetres))
                .forEach(all::add);
        return new RoofPlan(lengthMetres, widthMetres, all);
    }

    private static List<PlacedObject> edges(double length, double width) {
        return List.of(
                new PlacedObject("front-edge", ObjectType.EDGE, "front edge", 0, 0.5, 0, width),
                new PlacedObject("rear-edge", ObjectType.EDGE, "rear edge", 1, 0.5, 0, width),
                new PlacedObject("left-edge", ObjectType.EDGE, "left edge", 0.5, 0, length, 0),
                new PlacedObject("right-edge", ObjectType.EDGE, "right edge", 0.5, 1, length, 0));
    }

    /** Returns what was placed on the roof: all but the edges. */
    public List<PlacedObject> placed() {
        return objects.stream()
                .filter(object -> object.type() != ObjectType.EDGE)
                .toList();
    }

    /**
     * Returns a point for a zone by its name, the other way round from {@link #zoneAt}: the middle of the field, or of the
     * object that is named the part nearest to it. An unknown name is the middle of the roof.
     */
    public Point placeOf(String zoneName) {
        String[] parts = zoneName.split(",", 2);
        Point middle = Zone.middleOf(parts[0].strip());
        String name = parts.length > 1 ? parts[1].strip() : "";
        return objects.stream()
                .filter(object -> object.name().equalsIgnoreCase(name))
                .findFirst()
                .map(object -> object.nearestTo(middle, lengthMetres, widthMetres))
                .orElse(middle);
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
