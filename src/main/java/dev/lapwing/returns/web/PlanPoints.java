package dev.lapwing.returns.web;

import io.quarkus.qute.TemplateExtension;
import java.util.Map;

/** What templates of returns can ask: places on the drawn roof plan, and names of fields. */
@TemplateExtension
final class PlanPoints {
    private static final Map<String, String> NAMES = Map.of(
            "unit", "Unit",
            "note", "Note",
            "returnedAt", "Time of return",
            "odometerKm", "Odometer",
            "reportedBy", "Who told you",
            "marks", "Marks",
            "key", "Form");

    private PlanPoints() {}

    static double planX(double share) {
        return 10 + 580 * share;
    }

    /** Returns the line of a point: seen from above with the front at the left, the left side of a unit is the lower one. */
    static double planY(double share) {
        return 24 + 172 * (1 - share);
    }

    static double planLabelY(double share) {
        return planY(share) + 5;
    }

    static String fieldName(String field) {
        return NAMES.getOrDefault(field, field);
    }
}
