package dev.lapwing.fleet;

import dev.lapwing.platform.FieldErrors;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.time.LocalDate;
import java.util.regex.Pattern;

/** What holds for the fields of every unit, however it is sent. */
final class UnitFields {
    private static final Pattern NUMBER = Pattern.compile("[\\p{L}\\p{N}](?:[\\p{L}\\p{N} ._-]{0,38}[\\p{L}\\p{N}])?");
    private static final LocalDate EARLIEST = LocalDate.of(1950, 1, 1);
    private static final LocalDate LATEST = LocalDate.of(2200, 1, 1);
    private static final int DECIMALS = 3;
    private static final BigDecimal SHORTEST = BigDecimal.ONE;
    private static final BigDecimal LONGEST = BigDecimal.valueOf(25);
    private static final BigDecimal HIGHEST = BigDecimal.valueOf(5);

    private UnitFields() {}

    /**
     * Checks what was sent and fills it into the unit; what is wrong is noted.
     *
     * @param today the service's date; a day of grace is given, since the sender's may be ahead
     */
    static void fill(Unit unit, UnitRequest request, LocalDate today, FieldErrors errors) {
        if (errors.present(request.number(), "number")) {
            errors.check(
                    NUMBER.matcher(request.number()).matches(),
                    "number",
                    "must be 1 to 40 letters, digits, spaces, dots, hyphens or underscores");
        }
        unit.number = request.number();
        unit.vin = vin(request.vin(), errors);
        errors.present(request.kind(), "kind");
        unit.kind = errors.word(UnitKind.class, request.kind(), "kind").orElse(null);
        unit.depot = depot(request.depot(), errors);
        unit.lengthMetres = metres(request.lengthMetres(), LONGEST, "lengthMetres", errors);
        unit.heightMetres = metres(request.heightMetres(), HIGHEST, "heightMetres", errors);
        unit.storage = errors.word(Storage.class, request.storage(), "storage").orElse(Storage.OUTSIDE);
        season(unit, request.season(), errors);
        if (errors.present(request.roof(), "roof")) {
            if (unit.roof == null) {
                unit.roof = new Roof();
            }
            roof(unit.roof, request.roof(), today, errors);
        }
    }

    private static void season(Unit unit, DepotRequest.SeasonDays season, FieldErrors errors) {
        if (season == null) {
            return;
        }
        boolean own = !DepotFields.blank(season.opens()) || !DepotFields.blank(season.closes());
        if (own) {
            DepotFields.season(season, errors);
        }
        unit.seasonOpens = own ? season.opens() : null;
        unit.seasonCloses = own ? season.closes() : null;
    }

    private static String vin(String typed, FieldErrors errors) {
        if (typed == null || typed.isBlank()) {
            return null;
        }
        String vin = Vin.normalised(typed);
        errors.atMost(vin, 40, "vin");
        errors.check(vin.indexOf('\0') < 0, "vin", "holds a NUL character");
        return vin;
    }

    private static Depot depot(String code, FieldErrors errors) {
        if (!errors.present(code, "depot")) {
            return null;
        }
        Depot depot = Depot.findById(code);
        errors.check(depot != null, "depot", "is not the code of a depot");
        return depot;
    }

    /** Returns the length as exactly as it is stored, in millimetres; one that is out of reach is noted. */
    private static BigDecimal metres(BigDecimal value, BigDecimal most, String field, FieldErrors errors) {
        if (!errors.present(value, field)) {
            return null;
        }
        boolean inReach = value.compareTo(SHORTEST) >= 0 && value.compareTo(most) <= 0;
        errors.check(inReach, field, "must be from " + SHORTEST + " to " + most + " metres");
        return inReach ? value.setScale(DECIMALS, RoundingMode.HALF_UP) : null;
    }

    /** Fills the roof that is there: to set another would count as a change even with nothing new in it. */
    static void roof(Roof roof, UnitRequest.RoofRequest request, LocalDate today, FieldErrors errors) {
        errors.present(request.surface(), "roof.surface");
        roof.surface =
                errors.word(Surface.class, request.surface(), "roof.surface").orElse(null);
        roof.footing =
                errors.word(Footing.class, request.footing(), "roof.footing").orElse(Footing.UNKNOWN);
        roof.membraneSystem = text(request.membraneSystem(), "roof.membraneSystem", errors);
        roof.confirmedBy = text(request.confirmedBy(), "roof.confirmedBy", errors);
        roof.sealant = text(request.sealant(), "roof.sealant", errors);
        roof.confirmedOn = past(request.confirmedOn(), today, "roof.confirmedOn", errors);
        roof.installedOn = past(request.installedOn(), today, "roof.installedOn", errors);
    }

    private static String text(String typed, String field, FieldErrors errors) {
        errors.atMost(typed, 100, field);
        errors.check(typed == null || typed.indexOf('\0') < 0, field, "holds a NUL character");
        return typed == null || typed.isBlank() ? null : typed.strip();
    }

    /** Notes an error when a date lies ahead, or so long ago that it is a slip of the pen; returns it. */
    static LocalDate past(LocalDate date, LocalDate today, String field, FieldErrors errors) {
        if (date != null) {
            errors.check(!date.isAfter(today.plusDays(1)), field, "lies in the future");
            errors.check(!date.isBefore(EARLIEST), field, "lies before " + EARLIEST.getYear());
        }
        return date;
    }

    /** Notes an error when a day of a unit's service is out of reach; such a day may lie ahead. */
    static void serviceDay(LocalDate date, String field, FieldErrors errors) {
        boolean inReach = date == null || !date.isBefore(EARLIEST) && date.isBefore(LATEST);
        errors.check(inReach, field, "must lie from " + EARLIEST.getYear() + " to " + (LATEST.getYear() - 1));
    }
}
