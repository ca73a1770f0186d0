package dev.lapwing.care.storage;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.fleet.Unit;
import io.quarkus.panache.common.Parameters;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** Reads open work in the order in which it should be looked at: strikes first, then by due. */
public final class DueList {
    /**
     * What to show; a null filter lets everything through.
     *
     * @param from first due date
     * @param until last due date
     * @param assignee sign-in name of a tech, or {@link #NOBODY} for work that nobody has
     * @param unit part of a unit's number
     */
    public record Filter(String depot, LocalDate from, LocalDate until, TaskKind kind, String assignee, String unit) {
        /** Stands for "nobody has it". */
        public static final String NOBODY = "-";
    }

    /** A place in the list: everything up to and with it has been read. */
    public record Place(int rank, Instant dueAt, UUID id) {
        /** The place before the first task. */
        public static final Place START = new Place(-1, Instant.EPOCH, new UUID(0, 0));

        public static Place of(CareTask task) {
            return new Place(task.kind == TaskKind.STRIKE_INSPECTION ? 0 : 1, task.dueAt, task.id);
        }
    }

    static final String RANK = "(case when t.kind = STRIKE_INSPECTION then 0 else 1 end)";
    static final String WANTED = """
             where t.state in :open
               and (:depot is null or t.depot.code = :depot)
               and (cast(:from as LocalDate) is null or t.due >= :from)
               and (cast(:until as LocalDate) is null or t.due <= :until)
               and (:kind is null or t.kind = :kind)
               and (:assignee is null or t.assignee = :assignee or :assignee = '-' and t.assignee is null)
               and (:unit is null or lower(t.unit.number) like :unit escape '!')
            """;
    static final String BEYOND = " and (" + RANK + " > :rank or " + RANK + " = :rank and (t.dueAt > :dueAt"
            + " or t.dueAt = :dueAt and t.id > :id))";

    private DueList() {}

    /** Returns up to {@code limit} tasks that follow a place, units and depots loaded with them. */
    public static List<CareTask> after(Filter filter, Place place, int limit) {
        var parameters =
                of(filter).and("rank", place.rank()).and("dueAt", place.dueAt()).and("id", place.id());
        return CareTask.<CareTask>find(
                        "from CareTask t join fetch t.unit join fetch t.depot" + WANTED + BEYOND + " order by " + RANK
                                + ", t.dueAt, t.id",
                        parameters)
                .range(0, limit - 1)
                .list();
    }

    /** Returns how many tasks the filter lets through. */
    public static long count(Filter filter) {
        return CareTask.count("from CareTask t" + WANTED, of(filter));
    }

    static Parameters of(Filter filter) {
        return Parameters.with("open", TaskState.OPEN)
                .and("depot", filter.depot())
                .and("from", filter.from())
                .and("until", filter.until())
                .and("kind", filter.kind())
                .and("assignee", filter.assignee())
                .and("unit", filter.unit() == null ? null : Unit.numberPattern(filter.unit()));
    }
}
