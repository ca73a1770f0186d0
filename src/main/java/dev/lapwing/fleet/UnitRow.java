package dev.lapwing.fleet;

import dev.lapwing.fleet.imports.CsvRow;
import dev.lapwing.platform.FieldErrors;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Pattern;

/** Reads a row of the register's file as what would be sent for the unit; a column left out keeps what is known. */
final class UnitRow {
    static final String YES = "yes";
    private static final String NOT_A_DATE = "is not a valid date (yyyy-mm-dd)";
    private static final String NOT_METRES = "is not a number of metres with up to 3 decimals, such as 7.45";
    private static final int LONGEST_WHY = 500;
    private static final Pattern METRES = Pattern.compile("\\d{1,4}(?:\\.\\d{1,3})?");
    private static final Map<String, String> COLUMNS_OF_FIELDS = Map.of("roof", "surface");
    private static final String ROOF_FIELD = "roof.";

    private final CsvRow row;
    private final Unit known;

    /** @param known the unit with this number, or null when there is none yet */
    UnitRow(CsvRow row, Unit known) {
        this.row = row;
        this.known = known;
    }

    /** Returns the column in which a field of a unit stands. */
    static String columnOf(String field) {
        String plain = field.startsWith(ROOF_FIELD) ? field.substring(ROOF_FIELD.length()) : field;
        return COLUMNS_OF_FIELDS.getOrDefault(plain, plain);
    }

    /** Returns what the row says of the unit and its roof; what cannot be read is rejected. */
    UnitRequest request() {
        return new UnitRequest(
                row.text("number"),
                cell("vin", unit -> unit.vin),
                row.text("kind"),
                row.text("depot"),
                metres("lengthMetres"),
                metres("heightMetres"),
                new UnitRequest.RoofRequest(
                        row.text("surface"),
                        row.text("footing"),
                        cell("membraneSystem", unit -> unit.roof.membraneSystem),
                        cell("confirmedBy", unit -> unit.roof.confirmedBy),
                        date("confirmedOn", unit -> unit.roof.confirmedOn),
                        cell("sealant", unit -> unit.roof.sealant),
                        date("installedOn", unit -> unit.roof.installedOn)),
                cell("storage", unit -> unit.storage.word()),
                null,
                null);
    }

    /** When the unit is in service; a null first day means from now on. */
    record Service(LocalDate from, LocalDate until, String why, boolean sold, LocalDate awaySince) {}

    /** Returns what the row says of the unit's service; what is wrong is rejected. */
    Service service() {
        LocalDate until = date("outOfServiceOn", unit -> unit.outOfServiceOn);
        var service = new Service(
                row.read("inServiceFrom", LocalDate::parse, NOT_A_DATE)
                        .orElse(known == null ? null : known.inServiceFrom),
                until,
                cell("outOfServiceWhy", unit -> unit.outOfServiceWhy),
                until != null && sold(),
                date("awaySince", unit -> unit.awaySince));
        var errors = new FieldErrors();
        UnitFields.serviceDay(service.from, "inServiceFrom", errors);
        UnitFields.serviceDay(service.until, "outOfServiceOn", errors);
        UnitFields.serviceDay(service.awaySince, "awaySince", errors);
        errors.atMost(service.why, LONGEST_WHY, "outOfServiceWhy");
        boolean inOrder = service.from == null || service.until == null || !service.until.isBefore(service.from);
        errors.check(inOrder, "outOfServiceOn", "lies before the unit is in service");
        boolean backAfter =
                service.awaySince == null || service.from == null || !service.awaySince.isAfter(service.from);
        errors.check(backAfter, "awaySince", "lies after the unit is in service again");
        row.reject(errors.list(), Function.identity());
        return service;
    }

    /** Returns whether a unit that leaves was sold; a file that does not say so tells of units that left for good. */
    private boolean sold() {
        if (!row.has("sold")) {
            return known == null || known.outOfServiceOn == null || known.sold;
        }
        String cell = row.text("sold");
        if (cell != null && !List.of(YES, "no").contains(cell)) {
            row.reject("sold", "must be yes or no");
        }
        return YES.equals(cell);
    }

    private String cell(String column, Function<Unit, String> before) {
        return row.has(column) || known == null ? row.text(column) : before.apply(known);
    }

    private LocalDate date(String column, Function<Unit, LocalDate> before) {
        return row.has(column) || known == null
                ? row.read(column, LocalDate::parse, NOT_A_DATE).orElse(null)
                : before.apply(known);
    }

    private BigDecimal metres(String column) {
        return row.read(column, this::metresOf, NOT_METRES).orElse(null);
    }

    private BigDecimal metresOf(String cell) {
        String plain = row.decimalComma() ? cell.replace(',', '.') : cell;
        if (!METRES.matcher(plain).matches()) {
            throw new NumberFormatException(cell);
        }
        return new BigDecimal(plain);
    }
}
