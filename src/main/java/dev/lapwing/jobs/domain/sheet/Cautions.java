package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.data.BadReferenceData;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import java.util.List;
import java.util.function.Predicate;

/** The cautions of the sheet in their order, from {@code shared/jobs/cautions.csv}. */
public final class Cautions {
    private final List<Entry> entries;

    private enum When {
        ALWAYS,
        WALKABLE,
        NO_WALK,
        UNKNOWN;

        boolean holdsFor(Footing footing) {
            return this == ALWAYS || name().equals(footing.name());
        }
    }

    private enum Short {
        YES,
        NO
    }

    private record Entry(When when, boolean inShort, Text text) {}

    private Cautions(List<Entry> entries) {
        this.entries = entries;
    }

    /**
     * Reads the file.
     *
     * @throws BadReferenceData when a row is wrong or a footing has no caution of its own
     */
    public static Cautions read(String csv) {
        List<Entry> entries = Table.read("cautions.csv", csv, "id", "when", "short", "en", "es", "fr").stream()
                .map(Cautions::entry)
                .toList();
        for (When when : When.values()) {
            if (entries.stream().noneMatch(entry -> entry.when() == when)) {
                throw new BadReferenceData("cautions.csv", 1, "has no caution for " + when);
            }
        }
        return new Cautions(entries);
    }

    private static Entry entry(Row row) {
        return new Entry(row.word("when", When.class), row.word("short", Short.class) == Short.YES, Text.read(row));
    }

    /** Returns the few of them that stand wherever work on such a roof is spoken of. */
    public List<Text> inShort(Footing footing) {
        return texts(entry -> entry.inShort() && entry.when().holdsFor(footing));
    }

    /** Returns those of the few that hold for every roof. */
    public List<Text> inShort() {
        return texts(entry -> entry.inShort() && entry.when() == When.ALWAYS);
    }

    /** Returns what must be read and acknowledged before work on a roof of this footing. */
    public List<Text> before(Footing footing) {
        return texts(entry -> entry.when().holdsFor(footing));
    }

    private List<Text> texts(Predicate<Entry> wanted) {
        return entries.stream().filter(wanted).map(Entry::text).toList();
    }
}
