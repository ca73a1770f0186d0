package dev.lapwing.care.storage;

import dev.lapwing.care.domain.DueWindow;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.fleet.Depot;
import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Refused;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import io.quarkus.panache.common.Parameters;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import jakarta.persistence.Version;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;

/** One piece of roof work. */
@Entity
@Table(name = "care_task")
public class CareTask extends PanacheEntityBase {
    private static final String DATED = "t.depot = :depot and t.state in :open and t.origin not in :events";

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "depot_code")
    public Depot depot;

    @Enumerated(EnumType.STRING)
    public TaskKind kind;

    @Enumerated(EnumType.STRING)
    public TaskOrigin origin;

    /** The care rule that made it, or null when none did. */
    @Column(name = "rule_id")
    public String ruleId;

    @Column(name = "rule_version")
    public Integer ruleVersion;

    /** Why it is to be done, for people. */
    public String why;

    public LocalDate opens;
    public LocalDate due;
    public LocalDate late;

    /** The instant it is due; of dated work the start of the due day at the depot. */
    @Column(name = "due_at")
    public Instant dueAt;

    /** The strike it answers, or null. */
    @Column(name = "strike_id")
    public UUID strikeId;

    /** The event it answers, or null. */
    @Column(name = "event_id")
    public UUID eventId;

    @Enumerated(EnumType.STRING)
    public TaskState state;

    /** Sign-in name of the tech who has it, or null. */
    public String assignee;

    /** Whether a person has handled it; the sweep then leaves it alone. */
    public boolean touched;

    /** What the rules say of it while a person has it in hand and they leave it alone, or null when it fits. */
    public String question;

    /** Names what it is for while it is open, so that two sweeps at once cannot make it twice. */
    @Column(name = "open_key")
    public String openKey;

    @Column(name = "created_at")
    public Instant createdAt;

    @Column(name = "created_by")
    public String createdBy;

    @Column(name = "done_at")
    public Instant doneAt;

    @Column(name = "done_on")
    public LocalDate doneOn;

    @Version
    public int version;

    /** Returns the task or refuses with "not found". */
    public static CareTask require(UUID id) {
        return CareTask.<CareTask>find("from CareTask t join fetch t.unit join fetch t.depot where t.id = ?1", id)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("task " + id));
    }

    public static Optional<CareTask> ofStrike(UUID strikeId) {
        return find("strikeId", strikeId).firstResultOptional();
    }

    /** Returns the tasks that answer events, by event; an event without one is left out. */
    public static Map<UUID, CareTask> ofEvents(Collection<UUID> eventIds) {
        List<CareTask> tasks = eventIds.isEmpty() ? List.of() : list("eventId in ?1", eventIds);
        return tasks.stream().collect(Collectors.toMap(task -> task.eventId, Function.identity()));
    }

    /** Returns the due days of a depot's open work that is due on a day; event work is due at an instant. */
    public static List<LocalDate> datedDueDaysAt(Depot depot) {
        return getEntityManager()
                .createQuery("select distinct t.due from CareTask t where " + DATED, LocalDate.class)
                .setParameter("depot", depot)
                .setParameter("open", TaskState.OPEN)
                .setParameter("events", TaskOrigin.EVENTS)
                .getResultList();
    }

    /** Sets the instant at which such work begins to be due. */
    public static void setDueAt(Depot depot, LocalDate due, Instant dueAt) {
        update(
                "dueAt = :dueAt where " + DATED.replace("t.", "") + " and due = :due",
                Parameters.with("dueAt", dueAt)
                        .and("depot", depot)
                        .and("open", TaskState.OPEN)
                        .and("events", TaskOrigin.EVENTS)
                        .and("due", due));
    }

    /** Sets the instant at which it begins to be due, if it is due on a day. */
    public void setDueAtOfDay() {
        if (!origin.event()) {
            dueAt = due.atStartOfDay(depot.zoneId()).toInstant();
        }
    }

    /** Returns the open tasks of units, the one due first first. */
    public static List<CareTask> openOf(Collection<UUID> unitIds) {
        return unitIds.isEmpty()
                ? List.of()
                : list(
                        "from CareTask t join fetch t.depot where t.unit.id in ?1 and t.state in ?2 order by t.dueAt, t.id",
                        unitIds,
                        TaskState.OPEN);
    }

    public DueWindow window() {
        return new DueWindow(opens, due, late);
    }

    public Standing standingAt(Instant now) {
        return Standing.of(kind, window(), depot.dateAt(now));
    }
}
