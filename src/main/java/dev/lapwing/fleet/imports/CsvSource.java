package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldErrors;
import java.io.Closeable;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * Reads the rows of a CSV file as RFC 4180 describes it, with commas or semicolons. A row that breaks the quoting is
 * rejected, and reading goes on with the line after it.
 */
final class CsvSource implements Closeable {
    /** The field of an error that concerns the whole file. */
    static final String FILE = "file";

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
    private static final CSVFormat COMMAS = CSVFormat.RFC4180;
    private final LineSource lines;
    private final CsvHeader header;
    private final CSVFormat format;
    private CSVParser parser;
    private Iterator<CSVRecord> records;

    private CsvSource(LineSource lines, CsvHeader header) throws IOException {
        this.lines = lines;
        this.header = header;
        format = COMMAS.builder().setDelimiter(header.delimiter()).get();
        restart();
    }

    /**
     * Opens a file and reads its header; what is wrong with it is noted, and then there are no rows to read.
     *
     * @param renamed names to read the header under, in the order of the file; null as it stands
     */
    static CsvSource open(InputStream bytes, CsvTable table, List<String> renamed, FieldErrors errors)
            throws IOException {
        var lines = new LineSource(bytes);
        String line = firstLine(lines, errors);
        char delimiter = delimiterOf(line);
        List<String> found = cells(line, delimiter, errors);
        List<String> names = renamed == null ? found : renamed;
        return new CsvSource(lines, new CsvHeader(delimiter, names, table, errors));
    }

    private static String firstLine(LineSource lines, FieldErrors errors) throws IOException {
        var characters = new char[LineSource.LONGEST_RECORD];
        try {
            int length = Math.max(0, lines.read(characters, 0, characters.length));
            String line = new String(characters, 0, length);
            errors.check(!line.isBlank(), FILE, "is empty: a header is needed");
            errors.check(lines.utf8(), FILE, "is not UTF-8 text");
            boolean otherEnds = line.replaceFirst("\r?\n$", "").indexOf('\r') >= 0;
            errors.check(!otherEnds, FILE, "has lines that end with CR alone; save it with CR LF or LF");
            return line;
        } catch (LineSource.TooLong tooLong) {
            errors.check(false, FILE, "has no header: its first line " + tooLong.getMessage());
            return "";
        }
    }

    private static char delimiterOf(String header) {
        String bare = QUOTED.matcher(header).replaceAll("");
        long semicolons = bare.chars().filter(c -> c == ';').count();
        long commas = bare.chars().filter(c -> c == ',').count();
        return semicolons > commas ? ';' : ',';
    }

    private static List<String> cells(String line, char delimiter, FieldErrors errors) throws IOException {
        try (var parser =
                CSVParser.parse(line, COMMAS.builder().setDelimiter(delimiter).get())) {
            List<CSVRecord> records = parser.getRecords();
            return records.isEmpty() ? List.of() : records.get(0).toList();
        } catch (UncheckedIOException broken) {
            errors.check(false, FILE, "has a header that breaks the rules of quoting");
            return List.of();
        }
    }

    CsvHeader header() {
        return header;
    }

    long bytesRead() {
        return lines.bytesRead();
    }

    /** Returns the next row, or null at the end. Empty lines are not rows. */
    CsvRow next() throws IOException {
        CsvRow row = read();
        while (row != null
                && row.good()
                && row.cells().size() == 1
                && row.cells().get(0).isBlank()) {
            row = read();
        }
        return row;
    }

    private CsvRow read() throws IOException {
        lines.beginRecord();
        int line = lines.linesRead() + 1;
        try {
            return records.hasNext() ? row(line, records.next()) : null;
        } catch (UncheckedIOException failure) {
            if (!(failure.getCause() instanceof CSVException) && !(failure.getCause() instanceof LineSource.TooLong)) {
                throw failure;
            }
            var row = new CsvRow(header, line, List.of());
            row.rejectWhole("breaks the rules of quoting");
            lines.rewindToSecondLine();
            restart();
            return row;
        }
    }

    private CsvRow row(int line, CSVRecord found) {
        var row = new CsvRow(header, line, Arrays.asList(found.values()));
        if (!lines.utf8()) {
            row.rejectWhole("is not UTF-8 text");
        } else if (found.size() != header.names().size()
                && !(found.size() == 1 && found.get(0).isBlank())) {
            row.rejectWhole("has " + found.size() + " cells, and the header has "
                    + header.names().size());
        } else if (Arrays.stream(found.values()).anyMatch(cell -> cell.indexOf('\0') >= 0)) {
            row.rejectWhole("holds a NUL character");
        }
        return row;
    }

    private void restart() throws IOException {
        parser = CSVParser.builder().setReader(lines).setFormat(format).get();
        records = parser.iterator();
    }

    @Override
    public void close() throws IOException {
        parser.close();
        lines.close();
    }
}
