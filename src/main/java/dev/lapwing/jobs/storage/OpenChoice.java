package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.verdict.Choice;
import dev.lapwing.jobs.domain.verdict.Work;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Embeddable;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** A choice that a signed sheet left to the coordinator, with what speaks for each option. Never changed. */
@Entity
@Immutable
@Table(name = "job_choice")
public class OpenChoice extends PanacheEntityBase {
    /** The follow-up task that the choice is about. */
    @Id
    @Column(name = "task_id")
    public UUID taskId;

    /** The sheet that led to it, by its task. */
    @Column(name = "sheet_id")
    public UUID sheetId;

    /** What speaks for the options, those of the first option first. */
    @Immutable
    @ElementCollection
    @CollectionTable(name = "job_choice_reason", joinColumns = @JoinColumn(name = "task_id"))
    @OrderColumn(name = "position")
    public List<SpeaksFor> reasons = new ArrayList<>();

    /** One reason for one option. */
    @Embeddable
    public record SpeaksFor(@Enumerated(EnumType.STRING) Work work, String words) {}

    /** Takes over what may be chosen. */
    public void setChoice(Choice choice) {
        for (Choice.Option option : choice.options()) {
            option.speaksFor().forEach(words -> reasons.add(new SpeaksFor(option.work(), words)));
        }
    }

    /** Returns the options, mildest first. */
    public List<Choice.Option> options() {
        return reasons.stream()
                .map(SpeaksFor::work)
                .distinct()
                .map(work -> new Choice.Option(
                        work,
                        reasons.stream()
                                .filter(reason -> reason.work() == work)
                                .map(SpeaksFor::words)
                                .toList()))
                .toList();
    }

    /** Returns those of the tasks whose choice is still to be made. */
    public static List<UUID> undecidedOf(Collection<UUID> taskIds) {
        return taskIds.isEmpty()
                ? List.of()
                : getEntityManager()
                        .createQuery(
                                "select c.taskId from OpenChoice c where c.taskId in :tasks"
                                        + " and c.taskId not in (select d.taskId from Decision d)",
                                UUID.class)
                        .setParameter("tasks", taskIds)
                        .getResultList();
    }
}
