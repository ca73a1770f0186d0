package dev.lapwing.fleet;

import dev.lapwing.fleet.imports.CsvRow;
import dev.lapwing.fleet.imports.CsvTable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.UUID;

/** Columns that another area adds to the register's files, such as how a unit is used. */
public interface RegisterColumns {
    List<CsvTable.Column> columns();

    /** Rejects what is wrong in the area's cells. */
    void check(CsvRow row);

    /** Stores the area's cells of units that go in, inside the running transaction; reads for all of them together. */
    void store(Map<Unit, CsvRow> rows, Instant now, String by);

    /** Returns the area's cells per unit in the order of its columns; a unit with none is left out. */
    Map<UUID, List<String>> valuesOf(Collection<Unit> units);
}
