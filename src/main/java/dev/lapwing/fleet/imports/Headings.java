package dev.lapwing.fleet.imports;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Fits the headings of a file to the columns of a table. */
final class Headings {
    /** Stands for "leave this column out". */
    static final String LEFT_OUT = "";

    private static final String MARK_OF_LEFT_OUT = " (left out)";

    private final CsvTable table;

    Headings(CsvTable table) {
        this.table = table;
    }

    /**
     * Returns for each heading the column it most likely means, or {@link #LEFT_OUT}: the one of the same name, whatever
     * its case, spaces, hyphens and underscores. Each column is given once, to the first heading that fits.
     */
    List<String> guess(List<String> headings) {
        Map<String, String> known = new HashMap<>();
        table.columns().forEach(column -> known.put(plain(column.name()), column.name()));
        Set<String> given = new HashSet<>();
        List<String> columns = new ArrayList<>();
        for (String heading : headings) {
            String column = known.get(plain(heading));
            columns.add(column != null && given.add(column) ? column : LEFT_OUT);
        }
        return columns;
    }

    /** Returns the needed columns that were given to no heading. */
    List<String> missing(List<String> columns) {
        return table.columns().stream()
                .filter(CsvTable.Column::required)
                .map(CsvTable.Column::name)
                .filter(name -> !columns.contains(name))
                .toList();
    }

    /** Returns the header as the import reads it: each heading under the name of its column, or marked as left out. */
    static List<String> renamed(List<String> headings, List<String> columns) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            String column = i < columns.size() ? columns.get(i) : LEFT_OUT;
            names.add(column.equals(LEFT_OUT) ? headings.get(i) + MARK_OF_LEFT_OUT : column);
        }
        return names;
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }
}
