package dev.lapwing.fleet.imports;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** A row of a file that did not go in. */
@Entity
@Table(name = "import_rejection")
@IdClass(Rejection.Key.class)
class Rejection extends PanacheEntityBase {
    /** The run and the line on which the row begins. */
    static class Key implements Serializable {
        private static final long serialVersionUID = 1L;
        UUID runId;
        int line;

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && line == key.line && Objects.equals(runId, key.runId);
        }

        @Override
        public int hashCode() {
            return Objects.hash(runId, line);
        }
    }

    @Id
    @Column(name = "run_id")
    UUID runId;

    @Id
    @Column(name = "line_number")
    int line;

    @Convert(converter = CellErrorsColumn.class)
    List<CellError> errors;

    /** The cells as they stand in the file; none when the row could not be taken apart. */
    @Convert(converter = TextsColumn.class)
    List<String> cells;

    static Rejection of(UUID runId, CsvRow row) {
        var rejection = new Rejection();
        rejection.runId = runId;
        rejection.line = row.line();
        rejection.errors = row.errors();
        rejection.cells = row.cells();
        return rejection;
    }

    /** Returns up to {@code limit} rejections of a run that follow a line. */
    static List<Rejection> after(UUID runId, int line, int limit) {
        return find("runId = ?1 and line > ?2 order by line", runId, line)
                .range(0, limit - 1)
                .list();
    }
}
