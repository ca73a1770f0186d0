package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.sheet.SheetEvent;
import dev.lapwing.jobs.domain.sheet.SheetEventKind;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** Something done on the sheet of a task beside noting findings. Never changed. */
@Entity
@Immutable
@Table(name = "job_sheet_event")
public class RecordedEvent extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "task_id")
    public UUID taskId;

    /** Its place on the sheet, from 0. */
    public int position;

    @Enumerated(EnumType.STRING)
    public SheetEventKind kind;

    /** The cleaner or sealant, or null. */
    public String subject;

    public String words;

    /** When it was so. */
    public Instant moment;

    @Column(name = "recorded_at")
    public Instant recordedAt;

    /** Sign-in name of who recorded it. */
    @Column(name = "recorded_by")
    public String recordedBy;

    /** Whether they came by the link of the job. */
    @Column(name = "by_link")
    public boolean byLink;

    /** Returns the events of a sheet in the order they were recorded. */
    public static List<RecordedEvent> of(UUID taskId) {
        return list("taskId = ?1 order by position", taskId);
    }

    public SheetEvent event() {
        return new SheetEvent(kind, subject, words, moment);
    }
}
