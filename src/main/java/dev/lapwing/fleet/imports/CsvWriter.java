package dev.lapwing.fleet.imports;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** Writes rows as RFC 4180 describes it, safe to open in a spreadsheet program. */
public final class CsvWriter {
    private final CSVPrinter printer;

    public CsvWriter(OutputStream out, char delimiter) throws IOException {
        Writer writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        printer = CSVFormat.RFC4180.builder().setDelimiter(delimiter).get().print(writer);
    }

    /** Writes a row; null is an empty cell. */
    public void write(List<String> cells) throws IOException {
        printer.printRecord(cells.stream()
                .map(cell -> cell == null ? "" : Formulas.guard(cell))
                .toList());
    }

    public void flush() throws IOException {
        printer.flush();
    }
}
