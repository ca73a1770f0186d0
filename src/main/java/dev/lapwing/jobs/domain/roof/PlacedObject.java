package dev.lapwing.jobs.domain.roof;

/**
 * Something on the roof, drawn as a rectangle.
 *
 * @param id unique on the plan
 * @param name as people call it, such as "front vent"
 * @param x centre along the length, 0 at the front to 1 at the rear
 * @param y centre across, 0 at the left to 1 at the right
 * @param lengthMetres size along the length of the unit; 0 for a line across
 * @param widthMetres size across; 0 for a line along
 */
public record PlacedObject(
        String id, ObjectType type, String name, double x, double y, double lengthMetres, double widthMetres) {
    /** Returns the metres from a point to the nearest side of the rectangle; 0 inside. */
    double distance(Point point, double roofLength, double roofWidth) {
        double along = beyond((point.x() - x) * roofLength, lengthMetres);
        double across = beyond((point.y() - y) * roofWidth, widthMetres);
        return Math.hypot(along, across);
    }

    /** Returns the point of this object that is nearest to a point. */
    Point nearestTo(Point point, double roofLength, double roofWidth) {
        return new Point(
                within(point.x(), x, lengthMetres / roofLength), within(point.y(), y, widthMetres / roofWidth));
    }

    private static double within(double share, double centre, double size) {
        double inside = Math.max(centre - size / 2, Math.min(centre + size / 2, share));
        return Math.max(0, Math.min(1, inside));
    }

    /** Returns this object cut to what fits around its centre on a roof. */
    PlacedObject fitted(double roofLength, double roofWidth) {
        return new PlacedObject(
                id,
                type,
                name,
                x,
                y,
                Math.min(lengthMetres, room(x, roofLength)),
                Math.min(widthMetres, room(y, roofWidth)));
    }

    private static double room(double centre, double roof) {
        return 2 * Math.min(centre, 1 - centre) * roof;
    }

    private static double beyond(double fromCentre, double size) {
        return Math.max(0, Math.abs(fromCentre) - size / 2);
    }

    double area() {
        return lengthMetres * widthMetres;
    }

    double sealantMetres() {
        return type.sealantMetres(lengthMetres, widthMetres);
    }
}
