package dev.lapwing.returns.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.OneToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** What the desk is asked when a note leaves open whether the roof was touched, and its answer. */
@Entity
@Table(name = "contact_question")
public class AskedQuestion extends PanacheEntityBase {
    @Id
    public UUID id;

    @OneToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "report_id")
    public ReturnReport report;

    public String text;

    @Column(name = "asked_at")
    public Instant askedAt;

    /** The answer, or null while there is none. */
    public Boolean contact;

    @Column(name = "answered_by")
    public String answeredBy;

    @Column(name = "answered_why")
    public String answeredWhy;

    @Column(name = "answered_at")
    public Instant answeredAt;

    public static Optional<AskedQuestion> of(UUID reportId) {
        return find("report.id", reportId).firstResultOptional();
    }
}
