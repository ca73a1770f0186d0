package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The plan a unit of each kind begins with, from {@code shared/jobs/roof-plans.csv}; invented, to be edited. */
public final class DefaultPlans {
    private static final String OTHER = "other";
    private static final double STANDARD_LENGTH_METRES = 7;

    private final Map<String, Template> templates = new HashMap<>();

    private record Template(double widthMetres, List<PlacedObject> objects) {}

    /**
     * Reads the file.
     *
     * @throws BadReferenceData when a row is wrong, an object does not fit on its roof, or the kind "other" is missing
     */
    public DefaultPlans(String csv) {
        Table.read(
                        "roof-plans.csv",
                        csv,
                        "unitKind",
                        "widthMetres",
                        "type",
                        "name",
                        "x",
                        "y",
                        "lengthMetres",
                        "widthAcrossMetres")
                .forEach(this::read);
        if (!templates.containsKey(OTHER)) {
            throw new BadReferenceData("roof-plans.csv", 1, "the unit kind '" + OTHER + "' is missing");
        }
    }

    private void read(Row row) {
        Template template = templates.computeIfAbsent(
                Words.key(row.text("unitKind")), kind -> new Template(row.number("widthMetres"), new ArrayList<>()));
        if (template.widthMetres() != row.number("widthMetres")) {
            throw row.refused("'widthMetres' differs from an earlier row of the same unit kind");
        }
        template.objects().add(object(row));
        List<PlacedObject> objects = template.objects();
        PlanCheck.of(STANDARD_LENGTH_METRES, row.number("widthMetres"), objects).stream()
                .findFirst()
                .ifPresent(error -> {
                    throw row.refused(error.field() + " " + error.message());
                });
    }

    private static PlacedObject object(Row row) {
        return new PlacedObject(
                Words.key(row.text("name")),
                row.word("type", ObjectType.class),
                row.text("name"),
                row.number("x"),
                row.number("y"),
                row.number("lengthMetres"),
                row.number("widthAcrossMetres"));
    }

    /** Returns the usual roof width of a unit kind in metres; an unknown kind gets that of "other". */
    public double widthMetres(String unitKind) {
        return template(unitKind).widthMetres();
    }

    /** Makes the plan of a unit of a kind and length; what is too long for a short roof is cut to fit. */
    public RoofPlan forUnit(String unitKind, double lengthMetres) {
        return forUnit(unitKind, lengthMetres, widthMetres(unitKind));
    }

    /** Makes the plan of a unit whose roof width is known. */
    public RoofPlan forUnit(String unitKind, double lengthMetres, double widthMetres) {
        return RoofPlan.fitting(lengthMetres, widthMetres, template(unitKind).objects());
    }

    private Template template(String unitKind) {
        return templates.getOrDefault(unitKind == null ? OTHER : Words.key(unitKind), templates.get(OTHER));
    }
}
