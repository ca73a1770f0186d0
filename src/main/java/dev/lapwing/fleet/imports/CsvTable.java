package dev.lapwing.fleet.imports;

import java.time.Instant;
import java.util.List;

/** A table that can be imported from CSV and exported to it. */
public interface CsvTable {
    /** A column by its name in the header. */
    record Column(String name, boolean required) {}

    /**
     * A page of an export.
     *
     * @param rows cells in the order of the columns, null for empty ones
     * @param next where the next page begins, or null after the last one
     */
    record ExportPage(List<List<String>> rows, String next) {}

    /** Returns the word for the table in addresses, such as {@code units}. */
    String name();

    List<Column> columns();

    /**
     * Stores rows inside the running transaction, or rejects them; rejected ones leave no trace. Reads what is there
     * already for all rows together.
     */
    void store(List<CsvRow> rows, Instant now, String by);

    /** Returns the page of all rows that begins at a cursor; null is the start. */
    ExportPage page(String cursor);
}
