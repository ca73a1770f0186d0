package dev.lapwing.jobs.domain.roof;

import java.util.ArrayList;
import java.util.List;

/**
 * A roof plan as it is drawn, in centimetres of the roof: front at the top, so that left is at the left. The point 0, 0 is
 * the front left corner.
 *
 * @param across width of the roof
 * @param along length of the roof
 * @param shapes what is on the roof, largest first so that nothing is hidden
 * @param marks what was found, numbered from 1
 */
public record RoofDrawing(double across, double along, List<Shape> shapes, List<Mark> marks) {
    private static final double CM = 100;
    private static final double THINNEST_CM = 4;
    private static final double MARK_CM = 22;
    private static final double LARGE_CM = 45;
    private static final double LETTER_CM = 9;
    private static final double MARGIN_CM = 14;
    private static final double MARGIN_ENDS_CM = 22;
    /** Marks of one place are laid around it in rings of so many. */
    private static final int RING = 6;

    /**
     * An object as a rectangle.
     *
     * @param line whether it is a seam, moulding or the like, drawn as a line
     */
    public record Shape(
            String id, String type, String name, boolean line, double left, double top, double width, double height) {
        /** Returns the middle of the rectangle, from the left. */
        public double middleX() {
            return rounded(left + width / 2);
        }

        /** Returns the line on which its name is written, from the front: within it when it is large, else below it. */
        public double labelY() {
            return rounded(height > LARGE_CM ? top + height / 2 + 3 : top + height + LETTER_CM);
        }
    }

    /**
     * Something found on the roof.
     *
     * @param day ISO date of the day it was found, or empty
     * @param words what was found, with the place
     */
    public record Mark(int number, double x, double y, String day, String words) {
        /** Returns the line on which the number is written. */
        public double labelY() {
            return rounded(y + 4);
        }
    }

    /** What is to be marked, at a point of the plan. */
    public record Found(Point at, String day, String words) {}

    /** Returns the part of the plane that is shown, as SVG writes it. */
    public String viewBox() {
        return -MARGIN_CM + " " + -MARGIN_ENDS_CM + " " + rounded(across + 2 * MARGIN_CM) + " "
                + rounded(along + 2 * MARGIN_ENDS_CM);
    }

    /** Returns the lines between the nine fields, as SVG writes them. */
    public String grid() {
        return "M%1$s 0V%3$s M%2$s 0V%3$s M0 %4$sH%6$s M0 %5$sH%6$s"
                .formatted(
                        rounded(across / 3),
                        rounded(across * 2 / 3),
                        along,
                        rounded(along / 3),
                        rounded(along * 2 / 3),
                        across);
    }

    public double middle() {
        return rounded(across / 2);
    }

    /** Returns the line below the roof on which "rear" is written. */
    public double below() {
        return rounded(along + 15);
    }

    /** Draws a plan with what was found, in its order. */
    public static RoofDrawing of(RoofPlan plan, List<Found> found) {
        double across = rounded(plan.widthMetres() * CM);
        double along = rounded(plan.lengthMetres() * CM);
        List<Shape> shapes = plan.placed().stream()
                .sorted((one, other) -> Double.compare(other.area(), one.area()))
                .map(object -> shape(object, across, along))
                .toList();
        return new RoofDrawing(across, along, shapes, marks(found, across, along));
    }

    private static Shape shape(PlacedObject object, double across, double along) {
        double width = Math.max(THINNEST_CM, object.widthMetres() * CM);
        double height = Math.max(THINNEST_CM, object.lengthMetres() * CM);
        return new Shape(
                object.id(),
                object.type().word(),
                object.name(),
                object.type().line(),
                rounded(object.y() * across - width / 2),
                rounded(object.x() * along - height / 2),
                rounded(width),
                rounded(height));
    }

    private static List<Mark> marks(List<Found> found, double across, double along) {
        List<Mark> marks = new ArrayList<>();
        for (Found one : found) {
            double x = one.at().y() * across;
            double y = one.at().x() * along;
            for (int round = 1; taken(marks, x, y) && round <= 5 * RING; round++) {
                double angle = 2 * Math.PI * round / RING;
                double away = MARK_CM * (1 + (round - 1) / RING);
                x = clamped(one.at().y() * across + away * Math.sin(angle), across);
                y = clamped(one.at().x() * along - away * Math.cos(angle), along);
            }
            marks.add(new Mark(marks.size() + 1, rounded(x), rounded(y), one.day(), one.words()));
        }
        return marks;
    }

    private static boolean taken(List<Mark> marks, double x, double y) {
        return marks.stream().anyMatch(mark -> Math.hypot(mark.x() - x, mark.y() - y) < MARK_CM * 0.9);
    }

    private static double clamped(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    private static double rounded(double value) {
        return Math.round(value * 10) / 10.0;
    }
}
