package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** The first row of a file: which column is where. Case and spaces around a name do not matter. */
final class CsvHeader {
    private final char delimiter;
    private final List<String> names;
    private final Map<String, Integer> places = new HashMap<>();
    private final List<String> ignored = new ArrayList<>();

    /** Reads the header of a table; what is wrong with it is noted. */
    CsvHeader(char delimiter, List<String> names, CsvTable table, FieldErrors errors) {
        this.delimiter = delimiter;
        this.names = List.copyOf(names);
        Map<String, String> known = new HashMap<>();
        table.columns().forEach(column -> known.put(plain(column.name()), column.name()));
        for (int i = 0; i < names.size(); i++) {
            String column = known.get(plain(names.get(i)));
            if (column == null) {
                ignored.add(names.get(i));
            } else {
                errors.check(places.putIfAbsent(column, i) == null, column, "stands in the header twice");
            }
        }
        for (CsvTable.Column column : table.columns()) {
            errors.check(
                    !column.required() || places.containsKey(column.name()),
                    column.name(),
                    "is a column that the file must have");
        }
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    char delimiter() {
        return delimiter;
    }

    /** Returns the names as they stand in the file. */
    List<String> names() {
        return names;
    }

    /** Returns the names that the table does not know. */
    List<String> ignored() {
        return ignored;
    }

    int place(String column) {
        return places.getOrDefault(column, -1);
    }
}
