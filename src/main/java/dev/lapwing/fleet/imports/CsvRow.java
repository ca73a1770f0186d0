package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldError;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** One row of a file, with what was found wrong in it so far. */
public final class CsvRow {
    private final CsvHeader header;
    private final int line;
    private final List<String> cells;
    private final List<CellError> errors = new ArrayList<>();

    CsvRow(CsvHeader header, int line, List<String> cells) {
        this.header = header;
        this.line = line;
        this.cells = cells;
    }

    /** Returns the line of the file on which the row begins, the first line being 1. */
    public int line() {
        return line;
    }

    /** Returns whether the file has a column; a column that is left out leaves what is known as it is. */
    public boolean has(String column) {
        return header.place(column) >= 0;
    }

    /** Returns a cell, or null when it is empty or the file has no such column. */
    public String text(String column) {
        int place = header.place(column);
        if (place < 0 || place >= cells.size()) {
            return null;
        }
        String cell = Formulas.unguard(cells.get(place)).strip();
        return cell.isEmpty() ? null : cell;
    }

    /** Reads a cell; one that cannot be read is noted with the message and read as empty. */
    public <T> Optional<T> read(String column, Function<String, T> reading, String message) {
        String cell = text(column);
        if (cell == null) {
            return Optional.empty();
        }
        try {
            return Optional.of(reading.apply(cell));
        } catch (RuntimeException unreadable) {
            reject(column, message);
            return Optional.empty();
        }
    }

    /** Returns whether numbers in this file may have a decimal comma. */
    public boolean decimalComma() {
        return header.delimiter() == ';';
    }

    /** Notes what is wrong with a cell; of several reasons the first counts. */
    public void reject(String column, String message) {
        if (errors.stream().noneMatch(error -> error.field().equals(column))) {
            errors.add(new CellError(column, message, text(column)));
        }
    }

    /** Notes what is wrong with fields, under the names of their columns. */
    public void reject(List<FieldError> found, Function<String, String> columnOf) {
        found.forEach(error -> reject(columnOf.apply(error.field()), error.message()));
    }

    void rejectWhole(String message) {
        errors.add(new CellError(CellError.WHOLE_ROW, message, null));
    }

    public boolean good() {
        return errors.isEmpty();
    }

    List<CellError> errors() {
        return List.copyOf(errors);
    }

    void forgetErrors() {
        errors.clear();
    }

    List<String> cells() {
        return cells;
    }
}
