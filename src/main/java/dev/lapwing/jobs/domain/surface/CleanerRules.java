package dev.lapwing.jobs.domain.surface;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What may touch which surface, read from {@code shared/surfaces}. Every pair of surface and class has a verdict. */
public final class CleanerRules {
    /** The surface that stands for every unknown one. */
    private static final String OTHER = "other";

    private final Map<String, Surface> surfaces = new LinkedHashMap<>();
    private final Map<String, String> classNames = new LinkedHashMap<>();
    private final Map<Pair, Touch> touches = new HashMap<>();

    private enum Verdict {
        ALLOWED,
        /** Only when the maker of the roof says so. */
        MAKER_ONLY,
        REFUSED
    }

    private record Surface(String key, String name) {}

    private record Pair(String surface, String type) {}

    private record Touch(Verdict verdict, String reason) {}

    /**
     * Reads the three files of the rules.
     *
     * @throws BadReferenceData when a file is wrong or a pair of surface and class has no verdict
     */
    public CleanerRules(String surfacesCsv, String classesCsv, String touchCsv) {
        Table.read("surfaces.csv", surfacesCsv, "surface", "alsoWritten", "name")
                .forEach(this::readSurface);
        Table.read("cleaner-classes.csv", classesCsv, "class", "name")
                .forEach(row -> classNames.put(Words.key(row.text("class")), row.text("name")));
        Table.read("what-may-touch.csv", touchCsv, "surface", "class", "verdict", "reason")
                .forEach(this::readTouch);
        requireEveryPair();
    }

    private void readSurface(Row row) {
        Surface surface = new Surface(Words.key(row.text("surface")), row.text("name"));
        surfaces.put(surface.key(), surface);
        if (!row.optionalText("alsoWritten").isBlank()) {
            surfaces.put(Words.key(row.text("alsoWritten")), surface);
        }
    }

    private void readTouch(Row row) {
        Pair pair = new Pair(Words.key(row.text("surface")), Words.key(row.text("class")));
        if (!surfaces.containsKey(pair.surface()) || !classNames.containsKey(pair.type())) {
            throw row.refused("surface or class is not known: " + pair.surface() + ", " + pair.type());
        }
        Touch touch = new Touch(row.word("verdict", Verdict.class), row.text("reason"));
        if (touches.put(pair, touch) != null) {
            throw row.refused("comes twice: " + pair.surface() + ", " + pair.type());
        }
    }

    private void requireEveryPair() {
        if (!surfaces.containsKey(OTHER)) {
            throw new BadReferenceData("surfaces.csv", 1, "the surface '" + OTHER + "' is missing");
        }
        for (Surface surface : surfaces.values()) {
            for (String type : classNames.keySet()) {
                if (!touches.containsKey(new Pair(surface.key(), type))) {
                    throw new BadReferenceData(
                            "what-may-touch.csv", 1, "has no verdict for " + surface.key() + ", " + type);
                }
            }
        }
    }

    public boolean knowsClass(String type) {
        return classNames.containsKey(Words.key(type));
    }

    /**
     * Says whether a cleaner may touch a surface. A surface that is null or not in the data is treated as the most
     * delicate one.
     *
     * @param makerStatement where the maker of the roof allows this cleaner (document, date), or null
     */
    public CleanerAnswer mayTouch(String surface, Cleaner cleaner, String makerStatement) {
        Surface found = surfaces.getOrDefault(surface == null ? OTHER : Words.key(surface), surfaces.get(OTHER));
        boolean makerAllows = makerStatement != null && !makerStatement.isBlank();
        List<String> against = new ArrayList<>();
        boolean makerMayAllow = true;
        for (String type : cleaner.classes()) {
            Touch touch = touch(found, type);
            if (touch.verdict() == Verdict.REFUSED || (touch.verdict() == Verdict.MAKER_ONLY && !makerAllows)) {
                against.add(reason(found, type, touch));
                makerMayAllow &= touch.verdict() == Verdict.MAKER_ONLY;
            }
        }
        return against.isEmpty()
                ? new CleanerAnswer.Allowed(allowed(found, cleaner, makerAllows ? makerStatement.strip() : ""))
                : new CleanerAnswer.Refused(against, makerMayAllow);
    }

    private Touch touch(Surface surface, String type) {
        Touch touch = touches.get(new Pair(surface.key(), type));
        return touch == null ? new Touch(Verdict.REFUSED, "this class of cleaner is not known") : touch;
    }

    private String reason(Surface surface, String type, Touch touch) {
        String unless = touch.verdict() == Verdict.MAKER_ONLY ? ", unless the maker of the roof allows it" : "";
        return classNames.getOrDefault(type, type) + " on " + surface.name() + ": " + touch.reason() + unless;
    }

    private String allowed(Surface surface, Cleaner cleaner, String makerStatement) {
        boolean needed =
                cleaner.classes().stream().anyMatch(type -> touch(surface, type).verdict() == Verdict.MAKER_ONLY);
        return needed
                ? "the maker of the roof allows it: " + makerStatement
                : surface.name() + " bears " + cleaner.name();
    }
}
