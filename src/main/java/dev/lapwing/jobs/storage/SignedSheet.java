package dev.lapwing.jobs.storage;

import dev.lapwing.jobs.domain.verdict.Verdict;
import dev.lapwing.jobs.domain.verdict.Work;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** A job sheet that was signed, with its verdict. Never changed. */
@Entity
@Immutable
@Table(name = "job_sheet")
public class SignedSheet extends PanacheEntityBase {
    /** The task that it is the sheet of. */
    @Id
    @Column(name = "task_id")
    public UUID taskId;

    @Column(name = "unit_id")
    public UUID unitId;

    /** What was mended or found out, or null when the roof was only washed or looked at. */
    @Enumerated(EnumType.STRING)
    public Work work;

    @Column(name = "cautions_read")
    public boolean cautionsRead;

    @Column(name = "dry_at_inspection")
    public boolean dryAtInspection;

    public String statement;

    /** The name as it was signed. */
    @Column(name = "signed_name")
    public String signedName;

    /** Sign-in name of who signed. */
    @Column(name = "signed_by")
    public String signedBy;

    /** Whether the signer came by the link of a mail. */
    @Column(name = "by_link")
    public boolean byLink;

    @Column(name = "signed_at")
    public Instant signedAt;

    @Enumerated(EnumType.STRING)
    public Verdict verdict;

    /** The strikes that were looked into, and the task itself: what a hold may name as its cause. */
    @Immutable
    @ElementCollection
    @CollectionTable(name = "job_sheet_cause", joinColumns = @JoinColumn(name = "task_id"))
    @Column(name = "cause_id")
    public Set<UUID> causes = new HashSet<>();

    /** The rules that applied and the findings they applied to, in words, worst first. */
    @Immutable
    @ElementCollection
    @CollectionTable(name = "job_sheet_reason", joinColumns = @JoinColumn(name = "task_id"))
    @OrderColumn(name = "position")
    @Column(name = "words")
    public List<String> reasons = new ArrayList<>();

    /** Returns the signed sheets of a unit, oldest first. */
    public static List<SignedSheet> ofUnit(UUID unitId) {
        return list("unitId = ?1 order by signedAt, taskId", unitId);
    }
}
