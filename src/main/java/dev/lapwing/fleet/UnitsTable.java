package dev.lapwing.fleet;

import dev.lapwing.fleet.imports.CsvRow;
import dev.lapwing.fleet.imports.CsvTable;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Ids;
import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The register of units as a file. A unit whose number is known is changed, any other is added. */
@ApplicationScoped
class UnitsTable implements CsvTable {
    private static final int PAGE = 500;
    private static final List<Column> OF_THE_UNIT =
            columns("number*,vin,kind*,depot*,lengthMetres*,heightMetres*,surface*,footing*,membraneSystem,confirmedBy,"
                    + "confirmedOn,sealant,installedOn");
    private static final List<Column> OF_ITS_SERVICE =
            columns("storage,inServiceFrom,outOfServiceOn,outOfServiceWhy,sold,awaySince");

    @Inject
    @All
    List<RegisterColumns> others;

    @Inject
    UnitChanges changes;

    @Inject
    Ids ids;

    @Inject
    Clock clock;

    private static List<Column> columns(String names) {
        return Stream.of(names.split(","))
                .map(name -> new Column(name.replace("*", ""), name.endsWith("*")))
                .toList();
    }

    @Override
    public String name() {
        return "units";
    }

    @Override
    public List<Column> columns() {
        return Stream.of(
                        OF_THE_UNIT.stream(),
                        others.stream().flatMap(other -> other.columns().stream()),
                        OF_ITS_SERVICE.stream())
                .flatMap(Function.identity())
                .toList();
    }

    @Override
    public void store(List<CsvRow> rows, Instant now, String by) {
        List<String> numbers = rows.stream()
                .map(row -> row.text("number"))
                .filter(Objects::nonNull)
                .toList();
        Map<String, Unit> known =
                Unit.withNumbers(numbers).stream().collect(Collectors.toMap(unit -> unit.number, Function.identity()));
        Map<Unit, UnitSnapshot> knownBefore = new LinkedHashMap<>();
        known.values().forEach(unit -> knownBefore.put(unit, UnitSnapshot.of(unit)));
        Map<Unit, CsvRow> goingIn = new LinkedHashMap<>();
        for (CsvRow row : rows) {
            Unit before = known.get(row.text("number"));
            var read = new UnitRow(row, before);
            UnitRequest request = read.request();
            UnitRow.Service service = read.service();
            Unit draft = filled(new Unit(), row, request, service, now);
            if (row.good()) {
                goingIn.put(
                        before == null ? added(draft, known, now) : changed(before, draft, request, service, now), row);
            }
        }
        others.forEach(other -> other.store(goingIn, now, by));
        var act = new UnitChanges.Act(now, by, "import");
        knownBefore.forEach((unit, before) -> changes.write(unit, before, act));
    }

    /** Fills a unit from a row and rejects what is wrong. */
    private Unit filled(Unit unit, CsvRow row, UnitRequest request, UnitRow.Service service, Instant now) {
        var errors = new FieldErrors();
        fill(unit, request, service, now, errors);
        row.reject(errors.list(), UnitRow::columnOf);
        others.forEach(other -> other.check(row));
        return unit;
    }

    private void fill(Unit unit, UnitRequest request, UnitRow.Service service, Instant now, FieldErrors errors) {
        UnitFields.fill(unit, request, LocalDate.now(clock), errors);
        boolean fromToday = service.from() == null && unit.depot != null;
        unit.inServiceFrom = fromToday ? unit.depot.dateAt(now) : service.from();
        unit.outOfServiceOn = service.until();
        unit.outOfServiceWhy = service.why();
        unit.sold = service.sold();
        unit.awaySince = service.awaySince();
    }

    private Unit added(Unit draft, Map<String, Unit> known, Instant now) {
        draft.id = ids.next();
        draft.createdAt = now;
        draft.persist();
        known.put(draft.number, draft);
        return draft;
    }

    /** Changes a unit unless the row says what is known already. */
    private Unit changed(Unit unit, Unit draft, UnitRequest request, UnitRow.Service service, Instant now) {
        boolean same =
                ofTheUnit(unit).equals(ofTheUnit(draft)) && ofItsService(unit).equals(ofItsService(draft));
        if (!same) {
            fill(unit, request, service, now, new FieldErrors());
        }
        return unit;
    }

    @Override
    public ExportPage page(String cursor) {
        List<Unit> units = Unit.after(cursor, null, PAGE);
        List<Map<UUID, List<String>>> added =
                others.stream().map(other -> other.valuesOf(units)).toList();
        List<List<String>> rows = units.stream().map(unit -> cells(unit, added)).toList();
        return new ExportPage(rows, units.size() < PAGE ? null : units.get(PAGE - 1).number);
    }

    private List<String> cells(Unit unit, List<Map<UUID, List<String>>> added) {
        List<String> cells = new ArrayList<>(ofTheUnit(unit));
        for (int i = 0; i < others.size(); i++) {
            List<String> none = Collections.nCopies(others.get(i).columns().size(), null);
            cells.addAll(added.get(i).getOrDefault(unit.id, none));
        }
        cells.addAll(ofItsService(unit));
        return cells;
    }

    private static List<String> ofTheUnit(Unit unit) {
        Roof roof = unit.roof;
        return Arrays.asList(
                unit.number,
                unit.vin,
                unit.kind.word(),
                unit.depot.code,
                plain(unit.lengthMetres),
                plain(unit.heightMetres),
                roof.surface.word(),
                roof.footing.word(),
                roof.membraneSystem,
                roof.confirmedBy,
                Objects.toString(roof.confirmedOn, null),
                roof.sealant,
                Objects.toString(roof.installedOn, null));
    }

    private static List<String> ofItsService(Unit unit) {
        return Arrays.asList(
                unit.storage.word(),
                unit.inServiceFrom.toString(),
                Objects.toString(unit.outOfServiceOn, null),
                unit.outOfServiceWhy,
                unit.sold ? UnitRow.YES : null,
                Objects.toString(unit.awaySince, null));
    }

    private static String plain(BigDecimal metres) {
        return metres.stripTrailingZeros().toPlainString();
    }
}
