package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import dev.lapwing.jobs.domain.roof.Point;
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

/** A finding on the sheet of a task. Never changed; one that was wrong is taken back by a {@link WithdrawnFinding}. */
@Entity
@Immutable
@Table(name = "job_finding")
public class RecordedFinding extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "task_id")
    public UUID taskId;

    /** Its place on the sheet, from 0. */
    public int position;

    public String zone;

    @Enumerated(EnumType.STRING)
    public FindingKind kind;

    @Enumerated(EnumType.STRING)
    public Depth depth;

    @Enumerated(EnumType.STRING)
    public Extent extent;

    @Column(name = "length_cm")
    public Double lengthCm;

    public String note;

    /** With {@code y} the place on the plan, or null when only the zone was named. */
    public Double x;

    public Double y;

    @Column(name = "recorded_at")
    public Instant recordedAt;

    /** Sign-in name of who recorded it. */
    @Column(name = "recorded_by")
    public String recordedBy;

    /** Whether it came by the link of a mail. */
    @Column(name = "by_link")
    public boolean byLink;

    /** Returns the findings of a task that stand, in the order they were recorded. */
    public static List<RecordedFinding> of(UUID taskId) {
        return list(
                "from RecordedFinding f where f.taskId = ?1"
                        + " and not exists (select 1 from WithdrawnFinding w where w.findingId = f.id) order by f.position",
                taskId);
    }

    /** Returns what was found on the roof of a unit in all its tasks and stands, in the order it was recorded. */
    public static List<RecordedFinding> ofUnit(UUID unitId) {
        return list(
                "select f from RecordedFinding f join CareTask t on t.id = f.taskId where t.unit.id = ?1"
                        + " and not exists (select 1 from WithdrawnFinding w where w.findingId = f.id)"
                        + " order by f.recordedAt, f.taskId, f.position",
                unitId);
    }

    /** Returns how many findings were ever recorded for a task, those taken back among them. */
    public static long everRecorded(UUID taskId) {
        return count("taskId", taskId);
    }

    /** Takes over what was found. */
    public void setFinding(Finding finding) {
        zone = finding.zone();
        kind = finding.kind();
        depth = finding.depth();
        extent = finding.extent();
        lengthCm = finding.lengthCm();
        note = finding.note();
        x = finding.at() == null ? null : finding.at().x();
        y = finding.at() == null ? null : finding.at().y();
    }

    public Finding finding() {
        return new Finding(zone, kind, depth, extent, lengthCm, note, x == null ? null : new Point(x, y));
    }
}
