package dev.lapwing.use.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.imports.CsvRow;
import dev.lapwing.fleet.imports.CsvTable;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.storage.Rental;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The rental log as a file. A rental of a unit that begins at a known moment is changed, any other is added. */
@ApplicationScoped
class RentalsTable implements CsvTable {
    private static final int PAGE = 500;
    private static final String NOT_A_TIME = "is not a time with offset (RFC 3339), such as 2025-06-02T10:00:00-04:00";

    @Inject
    Ids ids;

    @Override
    public String name() {
        return "rentals";
    }

    @Override
    public List<Column> columns() {
        return List.of(
                new Column("unit", true),
                new Column("out", true),
                new Column("back", false),
                new Column("reference", false));
    }

    /** A row with the times it was read as. */
    private record Entry(CsvRow row, Unit unit, OffsetDateTime out, OffsetDateTime back) {
        Instant outAt() {
            return LogTimes.exact(out);
        }

        Instant backAt() {
            return LogTimes.exact(back);
        }
    }

    @Override
    public void store(List<CsvRow> rows, Instant now, String by) {
        List<Entry> entries = read(rows, now);
        if (entries.isEmpty()) {
            return;
        }
        var logs = LoggedRentals.around(
                entries.stream().map(Entry::unit).distinct().toList(), reach(entries));
        for (Entry entry : entries) {
            store(entry, logs);
        }
    }

    /** Returns the rows that can be read, in order of time, so that a return is known before what follows it. */
    private static List<Entry> read(List<CsvRow> rows, Instant now) {
        List<String> numbers = rows.stream()
                .map(row -> row.text("unit"))
                .filter(Objects::nonNull)
                .toList();
        Map<String, Unit> units =
                Unit.withNumbers(numbers).stream().collect(Collectors.toMap(unit -> unit.number, Function.identity()));
        List<Entry> entries = new ArrayList<>();
        for (CsvRow row : rows) {
            Entry entry = read(row, units, now);
            if (row.good()) {
                entries.add(entry);
            }
        }
        entries.sort(Comparator.comparing(Entry::outAt));
        return entries;
    }

    private static Entry read(CsvRow row, Map<String, Unit> units, Instant now) {
        var errors = new FieldErrors();
        Unit unit = units.get(row.text("unit"));
        if (errors.present(row.text("unit"), "unit")) {
            errors.check(unit != null, "unit", "is not the number of a unit");
        }
        OffsetDateTime out = row.read("out", OffsetDateTime::parse, NOT_A_TIME).orElse(null);
        OffsetDateTime back =
                row.read("back", OffsetDateTime::parse, NOT_A_TIME).orElse(null);
        LogTimes.check(new LogTimes("out", out), new LogTimes("back", back), now, errors);
        errors.atMost(row.text("reference"), LogTimes.LONGEST_REFERENCE, "reference");
        row.reject(errors.list(), Function.identity());
        return new Entry(row, unit, out, back);
    }

    private static LoggedRentals.Reach reach(List<Entry> entries) {
        Instant first = entries.get(0).outAt();
        boolean open = entries.stream().anyMatch(entry -> entry.back() == null);
        Instant last = entries.stream()
                .map(entry -> entry.back() == null ? entry.outAt() : entry.backAt())
                .max(Comparator.naturalOrder())
                .orElseThrow();
        return new LoggedRentals.Reach(first, open ? null : last);
    }

    private void store(Entry entry, LoggedRentals logs) {
        Rental known = logs.startingAt(entry.unit(), entry.outAt());
        CsvRow row = entry.row();
        Instant back = row.has("back") || known == null ? entry.backAt() : known.backAt;
        Rental other = logs.sharingTime(entry.unit(), known, entry.outAt(), back);
        if (other != null) {
            row.reject("out", LogTimes.overlap("rental", other.outAt, other.backAt));
            return;
        }
        Rental rental = known == null ? new Rental() : known;
        rental.backAt = back;
        rental.reference = row.has("reference") || known == null ? row.text("reference") : known.reference;
        if (known == null) {
            rental.id = ids.next();
            rental.unit = entry.unit();
            rental.outAt = entry.outAt();
            rental.persist();
            logs.add(rental);
        }
    }

    @Override
    public ExportPage page(String cursor) {
        List<Rental> rentals = Rental.after(RentalCursor.read(cursor), PAGE);
        List<List<String>> rows = rentals.stream().map(RentalsTable::cells).toList();
        return new ExportPage(rows, rentals.size() < PAGE ? null : RentalCursor.write(rentals.get(PAGE - 1)));
    }

    private static List<String> cells(Rental rental) {
        return Arrays.asList(
                rental.unit.number, time(rental, rental.outAt), time(rental, rental.backAt), rental.reference);
    }

    private static String time(Rental rental, Instant instant) {
        return instant == null
                ? null
                : instant.atZone(rental.unit.depot.zoneId()).toOffsetDateTime().toString();
    }
}
