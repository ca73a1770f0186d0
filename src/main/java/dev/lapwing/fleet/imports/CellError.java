package dev.lapwing.fleet.imports;

/**
 * What is wrong with one cell.
 *
 * @param field name of the column, or {@code row} when the row as a whole is wrong
 * @param message what is wrong
 * @param value the cell as it stands in the file, cut when very long; null when the whole row is meant
 */
public record CellError(String field, String message, String value) {
    /** The field of an error that concerns the whole row. */
    public static final String WHOLE_ROW = "row";

    private static final int LONGEST_VALUE = 200;

    public CellError {
        if (value != null && value.length() > LONGEST_VALUE) {
            value = value.substring(0, LONGEST_VALUE - 1) + "…";
        }
    }
}
