package dev.lapwing.jobs.domain.surface;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.data.Row;
import dev.lapwing.jobs.domain.data.Table;
import java.util.List;
import java.util.TreeSet;

/**
 * A cleaner on the depot's list.
 *
 * @param name as on the bottle
 * @param classes every class it belongs to, such as citrus and petroleum-distillate; at least one
 */
public record Cleaner(String name, List<String> classes) {
    public Cleaner {
        classes = classes.stream().map(Words::key).distinct().sorted().toList();
        if (name.isBlank() || classes.isEmpty()) {
            throw new IllegalArgumentException("a cleaner has a name and at least one class");
        }
    }

    /**
     * Reads an operator's list with the columns name and classes (parted by spaces).
     *
     * @throws dev.lapwing.jobs.domain.data.BadReferenceData when a class is not known to the rules or a name comes twice
     */
    public static List<Cleaner> readList(String file, String csv, CleanerRules rules) {
        var names = new TreeSet<String>();
        return Table.read(file, csv, "name", "classes").stream()
                .map(row -> read(row, rules, names))
                .toList();
    }

    private static Cleaner read(Row row, CleanerRules rules, TreeSet<String> names) {
        Cleaner cleaner =
                new Cleaner(row.text("name"), List.of(row.text("classes").split("\\s+")));
        cleaner.classes().stream()
                .filter(type -> !rules.knowsClass(type))
                .findFirst()
                .ifPresent(type -> {
                    throw row.refused("'" + type + "' is not a class of cleaner");
                });
        if (!names.add(Words.key(cleaner.name()))) {
            throw row.refused("'" + cleaner.name() + "' comes twice");
        }
        return cleaner;
    }
}
