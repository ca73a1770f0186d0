package dev.lapwing.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;

/** Reads the tables that describe the invented fleet. */
final class DemoFiles {
    private static final CSVFormat FORMAT =
            CSVFormat.RFC4180.builder().setHeader().setSkipHeaderRecord(true).get();
    private final Path folder;

    DemoFiles(Path folder) {
        this.folder = folder;
    }

    List<Row> depots() {
        return read("depots.csv");
    }

    List<Row> staff() {
        return read("staff.csv");
    }

    List<Row> rota() {
        return read("rota.csv");
    }

    /** How each unit is built, how it is rented, and how far its work is. */
    List<Row> units() {
        return read("units.csv");
    }

    /** What was reported of units that came back, and what it led to. */
    List<Row> stories() {
        return read("stories.csv");
    }

    private List<Row> read(String name) {
        Path file = folder.resolve(name);
        try (var reader = Files.newBufferedReader(file, StandardCharsets.UTF_8);
                var parser = FORMAT.parse(reader)) {
            return parser.stream().map(Row::new).toList();
        } catch (IOException e) {
            throw new UncheckedIOException("The demo fleet cannot be read from " + file.toAbsolutePath(), e);
        }
    }

    /** One row of a table; an empty cell is null. */
    record Row(CSVRecord cells) {
        String text(String column) {
            String cell = cells.get(column);
            return cell.isEmpty() ? null : cell;
        }

        Integer number(String column) {
            return map(column, Integer::valueOf).orElse(null);
        }

        <T> Optional<T> map(String column, Function<String, T> read) {
            return Optional.ofNullable(text(column)).map(read);
        }

        /** Reads a word as the constant whose name it is, with spaces and hyphens for the underscores. */
        <E extends Enum<E>> Optional<E> constant(Class<E> type, String column) {
            return map(
                    column,
                    word -> Enum.valueOf(
                            type,
                            word.toUpperCase(Locale.ROOT).replace(' ', '_').replace('-', '_')));
        }
    }
}
