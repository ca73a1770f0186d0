package dev.lapwing.jobs.domain.data;

import dev.lapwing.jobs.domain.Words;
import org.apache.commons.csv.CSVRecord;

/** One row of a {@link Table}; every getter refuses a value it cannot use, naming file, line and column. */
public final class Row {
    private final String file;
    private final long line;
    private final CSVRecord values;

    Row(String file, long line, CSVRecord values) {
        this.file = file;
        this.line = line;
        this.values = values;
    }

    /** Returns the value of a column that must not be empty. */
    public String text(String column) {
        String value = values.get(column);
        if (value.isBlank()) {
            throw refused("'" + column + "' is empty");
        }
        return value;
    }

    /** Returns the value of a column that may be empty. */
    public String optionalText(String column) {
        return values.get(column);
    }

    /** Returns a finite number. */
    public double number(String column) {
        String value = text(column);
        try {
            double number = Double.parseDouble(value);
            if (Double.isFinite(number)) {
                return number;
            }
        } catch (NumberFormatException e) {
            throw refused("'" + column + "' is not a number: " + value);
        }
        throw refused("'" + column + "' is not a finite number: " + value);
    }

    /** Returns the enum value of a word. */
    public <E extends Enum<E>> E word(String column, Class<E> type) {
        String value = text(column);
        return Words.read(type, value)
                .orElseThrow(() -> refused("'" + column + "' is '" + value + "', expected one of " + Words.list(type)));
    }

    /** Makes the exception that refuses this row. */
    public BadReferenceData refused(String reason) {
        return new BadReferenceData(file, line, reason);
    }
}
