package dev.lapwing.jobs.domain.data;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** A comma-separated file with a header line, read whole. */
public final class Table {
    private static final CSVFormat FORMAT = CSVFormat.RFC4180
            .builder()
            .setHeader()
            .setSkipHeaderRecord(true)
            .setIgnoreEmptyLines(true)
            .setTrim(true)
            .get();

    private Table() {}

    /**
     * Reads the rows of a file.
     *
     * @param file name used in error messages
     * @param text the content of the file
     * @param columns the columns that must be in the header
     * @throws BadReferenceData when the file is not such a table or has no row
     */
    public static List<Row> read(String file, String text, String... columns) {
        try (CSVParser parser = CSVParser.parse(new StringReader(text), FORMAT)) {
            requireColumns(file, parser, columns);
            return rows(file, parser);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (IllegalArgumentException | UncheckedIOException e) {
            throw e instanceof BadReferenceData bad ? bad : new BadReferenceData(file, 1, e.getMessage());
        }
    }

    private static void requireColumns(String file, CSVParser parser, String... columns) {
        for (String column : columns) {
            if (!parser.getHeaderNames().contains(column)) {
                throw new BadReferenceData(file, 1, "column '" + column + "' is missing");
            }
        }
    }

    private static List<Row> rows(String file, CSVParser parser) {
        List<Row> rows = new ArrayList<>();
        long line = 1;
        for (CSVRecord values : parser) {
            line = values.getParser().getCurrentLineNumber();
            if (!values.isConsistent()) {
                throw new BadReferenceData(file, line, "has " + values.size() + " values, the header another number");
            }
            rows.add(new Row(file, line, values));
        }
        if (rows.isEmpty()) {
            throw new BadReferenceData(file, line, "has no row");
        }
        return rows;
    }
}
