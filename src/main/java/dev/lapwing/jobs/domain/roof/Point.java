package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.FieldError;
import java.util.ArrayList;
import java.util.List;

/**
 * A place on the plan.
 *
 * @param x along the length, 0 at the front to 1 at the rear
 * @param y across, 0 at the left to 1 at the right
 */
public record Point(double x, double y) {
    public Point {
        if (!isShare(x) || !isShare(y)) {
            throw new IllegalArgumentException("not on the roof: " + x + ", " + y);
        }
    }

    /** Returns what is wrong with coordinates as they were sent; null counts as missing. */
    public static List<FieldError> check(Double x, Double y) {
        List<FieldError> errors = new ArrayList<>();
        checkShare("x", x, "front", "rear", errors);
        checkShare("y", y, "left", "right", errors);
        return errors;
    }

    private static void checkShare(String field, Double value, String from, String to, List<FieldError> errors) {
        if (value == null || !isShare(value)) {
            errors.add(new FieldError(field, "is needed, from 0 (" + from + ") to 1 (" + to + ")"));
        }
    }

    static boolean isShare(double value) {
        return value >= 0 && value <= 1;
    }
}
