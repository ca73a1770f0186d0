package dev.lapwing.alerts.storage;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Ladder;
import dev.lapwing.alerts.domain.Rung;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FlushModeType;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** A step that was taken on the ladder of a strike. Never changed. */
@Entity
@Table(name = "ladder_step")
@IdClass(LadderStep.Key.class)
public class LadderStep extends PanacheEntityBase {
    /** The climb of a task, the rung and how often it came before. */
    public static final class Key {
        UUID taskId;
        int climb;
        Rung rung;
        int turn;

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key
                    && taskId.equals(key.taskId)
                    && climb == key.climb
                    && rung == key.rung
                    && turn == key.turn;
        }

        @Override
        public int hashCode() {
            return Objects.hash(taskId, climb, rung, turn);
        }
    }

    @Id
    @Column(name = "task_id")
    public UUID taskId;

    @Id
    public int climb;

    @Id
    @Enumerated(EnumType.STRING)
    public Rung rung;

    @Id
    public int turn;

    @Enumerated(EnumType.STRING)
    public Climb.Reason reason;

    @Column(name = "due_at")
    public Instant dueAt;

    @Column(name = "taken_at")
    public Instant takenAt;

    /** Names of who was told, for people; empty when there was nobody to tell. */
    public String told;

    /** Claims a step; returns false when it was taken before. Waits for another transaction that is at it. */
    public static boolean claim(UUID task, Climb climb, Ladder.Step step, Instant now, String told) {
        return getEntityManager()
                        .createNativeQuery("""
                                insert into ladder_step (task_id, climb, rung, turn, reason, due_at, taken_at, told)
                                values (:task, :climb, :rung, :turn, :reason, :due, :now, :told) on conflict do nothing
                                """)
                        .setParameter("task", task)
                        .setParameter("climb", climb.number())
                        .setParameter("rung", step.rung().name())
                        .setParameter("turn", step.turn())
                        .setParameter("reason", climb.reason().name())
                        .setParameter("due", step.at())
                        .setParameter("now", now)
                        .setParameter("told", told)
                        // Nothing else of the transaction bears on the key, so nothing need be written before.
                        .setFlushMode(FlushModeType.COMMIT)
                        .executeUpdate()
                == 1;
    }

    /** Returns the steps taken for a task, in the order in which they were taken. */
    public static List<LadderStep> of(UUID task) {
        return list("taskId = ?1 order by takenAt, climb, turn", task);
    }

    /** The last step taken on a rung of a climb. */
    public record Latest(UUID taskId, int climb, Ladder.Step step) {}

    /** Returns the last step of each rung of each climb of tasks. */
    public static List<Latest> latestOf(Collection<UUID> tasks) {
        return getEntityManager()
                .createQuery(
                        "select s.taskId, s.climb, s.rung, max(s.turn), max(s.takenAt) from LadderStep s"
                                + " where s.taskId in :tasks group by s.taskId, s.climb, s.rung",
                        Object[].class)
                .setParameter("tasks", tasks)
                .getResultStream()
                .map(row -> new Latest(
                        (UUID) row[0], (Integer) row[1], new Ladder.Step((Rung) row[2], (Integer) row[3], (Instant)
                                row[4])))
                .toList();
    }
}
