package dev.lapwing.use.application;

import dev.lapwing.fleet.RegisterColumns;
import dev.lapwing.fleet.Unit;
import dev.lapwing.fleet.imports.CsvRow;
import dev.lapwing.fleet.imports.CsvTable.Column;
import dev.lapwing.use.domain.Season;
import dev.lapwing.use.storage.SetPattern;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** How a unit is used, in the register's file: the pattern that was set for it, and a season of its own. */
@ApplicationScoped
class UseColumns implements RegisterColumns {
    private static final String PATTERN = "usePattern";
    private static final String REASON = "useReason";
    private static final String UNTIL = "useUntil";
    private static final String OPENS = "seasonOpens";
    private static final String CLOSES = "seasonCloses";

    @Inject
    KeepingPatterns keeping;

    @Override
    public List<Column> columns() {
        return List.of(PATTERN, REASON, UNTIL, OPENS, CLOSES).stream()
                .map(name -> new Column(name, false))
                .toList();
    }

    @Override
    public void check(CsvRow row) {
        if (row.has(PATTERN)) {
            PatternAsked asked = asked(row);
            if (asked.isSomething()) {
                row.reject(asked.errors(PATTERN, REASON, UNTIL), Function.identity());
            }
        }
        season(row);
    }

    private static PatternAsked asked(CsvRow row) {
        LocalDate until = row.read(UNTIL, LocalDate::parse, "is not a valid date (yyyy-mm-dd)")
                .orElse(null);
        return new PatternAsked(row.text(PATTERN), row.text(REASON), until);
    }

    private static void season(CsvRow row) {
        String opens = row.text(OPENS);
        String closes = row.text(CLOSES);
        if (opens == null && closes == null) {
            return;
        }
        if (opens == null || closes == null) {
            row.reject(opens == null ? OPENS : CLOSES, "is required: a season has a first and a last day");
            return;
        }
        row.read(OPENS, day -> Season.of(day, closes), "and seasonCloses are not a season, such as 04-01 and 10-31");
    }

    @Override
    public void store(Map<Unit, CsvRow> rows, Instant now, String by) {
        Map<UUID, SetPattern> before = SetPattern.of(ids(rows.keySet())).stream()
                .collect(Collectors.toMap(set -> set.unitId, Function.identity()));
        rows.forEach((unit, row) -> {
            if (row.has(PATTERN)) {
                pattern(unit, row, before.get(unit.id), now, by);
            }
            boolean other = !Objects.equals(unit.seasonOpens, row.text(OPENS))
                    || !Objects.equals(unit.seasonCloses, row.text(CLOSES));
            if (row.has(OPENS) && other) {
                unit.seasonOpens = row.text(OPENS);
                unit.seasonCloses = row.text(CLOSES);
            }
        });
    }

    private void pattern(Unit unit, CsvRow row, SetPattern before, Instant now, String by) {
        PatternAsked asked = asked(row);
        if (asked.isSomething()) {
            keeping.set(unit, asked, before, now, by);
        } else if (before != null) {
            keeping.end(unit, before, now, by, "import");
        }
    }

    @Override
    public Map<UUID, List<String>> valuesOf(Collection<Unit> units) {
        Map<UUID, SetPattern> set =
                SetPattern.of(ids(units)).stream().collect(Collectors.toMap(one -> one.unitId, Function.identity()));
        Map<UUID, List<String>> cells = new HashMap<>();
        for (Unit unit : units) {
            SetPattern one = set.get(unit.id);
            cells.put(
                    unit.id,
                    Arrays.asList(
                            one == null ? null : one.pattern.word(),
                            one == null ? null : one.reason,
                            one == null ? null : Objects.toString(one.setUntil, null),
                            unit.seasonOpens,
                            unit.seasonCloses));
        }
        return cells;
    }

    private static List<UUID> ids(Collection<Unit> units) {
        return units.stream().map(unit -> unit.id).toList();
    }
}
