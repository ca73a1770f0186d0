package dev.lapwing.care.storage;

import dev.lapwing.care.domain.Change;
import dev.lapwing.care.domain.RuleRef;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.platform.Ids;
import dev.lapwing.use.UnitRange;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/** Stores what a sweep decided, in a few batches. */
public final class SweepWriter {
    /** Who is written down as the maker of swept work. */
    public static final String SWEEP = "sweep";

    private static final String OPEN_STATES = "('PLANNED', 'ASSIGNED', 'ACCEPTED', 'UNDER_WAY')";

    private final Connection database;
    private final Ids ids;
    private final Instant now;
    private final String depot;
    private final ZoneId zone;

    /** A change of one unit's work. */
    public record UnitChange<C extends Change>(SweptUnit unit, C change) {}

    public SweepWriter(Connection database, Ids ids, Instant now, String depot, ZoneId zone) {
        this.database = database;
        this.ids = ids;
        this.now = now;
        this.depot = depot;
        this.zone = zone;
    }

    /** Calls tasks off and returns how many; one that a person has touched or ended meanwhile is left alone. */
    public int callOff(List<UnitChange<Change.CallOff>> changes) throws SQLException {
        if (changes.isEmpty()) {
            return 0;
        }
        String sql = "update care_task set state = 'CALLED_OFF', open_key = null, version = version + 1"
                + " where id = ? and touched = false and state in " + OPEN_STATES;
        try (PreparedStatement update = database.prepareStatement(sql)) {
            for (var change : changes) {
                update.setObject(1, UUID.fromString(change.change().task()));
                update.addBatch();
            }
            int[] counts = update.executeBatch();
            try (PreparedStatement step = step()) {
                for (int i = 0; i < counts.length; i++) {
                    if (counts[i] == 1) {
                        var change = changes.get(i).change();
                        UUID task = UUID.fromString(change.task());
                        add(step, task, TaskState.CALLED_OFF, "Called off: " + change.reason());
                    }
                }
                step.executeBatch();
            }
            return sum(counts);
        }
    }

    /** Makes tasks and returns how many; one that another sweep has made meanwhile is not made again. */
    public int create(List<UnitChange<Change.Create>> changes) throws SQLException {
        if (changes.isEmpty()) {
            return 0;
        }
        String sql = """
                insert into care_task (id, unit_id, depot_code, kind, origin, rule_id, rule_version, why, opens, due,
                                       late, due_at, state, touched, open_key, created_at, created_by, event_id, version)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, 'PLANNED', false, ?, ?, ?, ?, 0) on conflict do nothing
                """;
        Map<UUID, RuleRef> asked = new LinkedHashMap<>();
        try (PreparedStatement insert = database.prepareStatement(sql)) {
            for (var change : changes) {
                UUID id = ids.next();
                asked.put(id, change.change().rule());
                fill(insert, id, change);
                insert.addBatch();
            }
            insert.executeBatch();
        }
        asked.keySet().retainAll(made(changes));
        try (PreparedStatement step = firstStep()) {
            for (var task : asked.entrySet()) {
                fill(step, task.getKey(), TaskState.PLANNED, "Planned by rule " + task.getValue());
                step.addBatch();
            }
            step.executeBatch();
        }
        return asked.size();
    }

    /** Returns the open tasks of the units; PostgreSQL does not say which rows of a batch went in. */
    private Set<UUID> made(List<UnitChange<Change.Create>> changes) throws SQLException {
        String sql = "select t.id from care_task t" + UnitRange.WHERE_UNIT_OF.formatted("t.unit_id")
                + " and t.state = 'PLANNED'";
        try (PreparedStatement query = database.prepareStatement(sql)) {
            query.setString(1, depot);
            query.setString(2, changes.get(0).unit().number());
            query.setString(3, changes.get(changes.size() - 1).unit().number());
            Set<UUID> made = new HashSet<>();
            try (ResultSet row = query.executeQuery()) {
                while (row.next()) {
                    made.add(row.getObject(1, UUID.class));
                }
            }
            return made;
        }
    }

    private void fill(PreparedStatement insert, UUID id, UnitChange<Change.Create> unitChange) throws SQLException {
        Change.Create change = unitChange.change();
        LocalDate due = change.window().due();
        Instant dueAt = change.dueAt() == null ? due.atStartOfDay(zone).toInstant() : change.dueAt();
        insert.setObject(1, id);
        insert.setObject(2, unitChange.unit().id());
        insert.setString(3, depot);
        insert.setString(4, change.kind().name());
        insert.setString(5, change.origin().name());
        insert.setString(6, change.rule().id());
        insert.setInt(7, change.rule().version());
        insert.setString(8, change.why());
        insert.setObject(9, change.window().opens());
        insert.setObject(10, due);
        insert.setObject(11, change.window().late());
        insert.setObject(12, utc(dueAt));
        insert.setString(
                13,
                change.event() == null
                        ? unitChange.unit().id() + " " + change.kind()
                        : change.origin().word() + " " + change.event());
        insert.setObject(14, utc(now));
        insert.setString(15, SWEEP);
        insert.setObject(16, change.event() == null ? null : UUID.fromString(change.event()), Types.OTHER);
    }

    /** Notes on tasks what the rules ask of them; a null question takes away the one that stood. */
    public void ask(Map<String, String> questionsByTask) throws SQLException {
        if (questionsByTask.isEmpty()) {
            return;
        }
        try (PreparedStatement update = database.prepareStatement("update care_task set question = ? where id = ?")) {
            for (var question : questionsByTask.entrySet()) {
                update.setString(1, question.getValue());
                update.setObject(2, UUID.fromString(question.getKey()));
                update.addBatch();
            }
            update.executeBatch();
        }
    }

    /** A task that was just made has no step yet, so nobody need look for its last one. */
    private PreparedStatement firstStep() throws SQLException {
        return database.prepareStatement("insert into care_task_step (id, task_id, position, at, who, state, words)"
                + " values (?, ?, 0, ?, ?, ?, ?)");
    }

    private PreparedStatement step() throws SQLException {
        return database.prepareStatement("""
                insert into care_task_step (id, task_id, position, at, who, state, words)
                select ?, ?, coalesce(max(position) + 1, 0), ?, ?, ?, ? from care_task_step where task_id = ?
                """);
    }

    private void add(PreparedStatement step, UUID task, TaskState state, String words) throws SQLException {
        fill(step, task, state, words);
        step.setObject(7, task);
        step.addBatch();
    }

    private void fill(PreparedStatement step, UUID task, TaskState state, String words) throws SQLException {
        step.setObject(1, ids.next());
        step.setObject(2, task);
        step.setObject(3, utc(now));
        step.setString(4, SWEEP);
        step.setString(5, state.name());
        step.setString(6, words);
    }

    private static OffsetDateTime utc(Instant instant) {
        return instant.atOffset(ZoneOffset.UTC);
    }

    private static int sum(int[] counts) {
        int sum = 0;
        for (int count : counts) {
            sum += count;
        }
        return sum;
    }
}
