package dev.lapwing.returns.storage;

import dev.lapwing.fleet.Unit;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** An overhead contact taken as real. */
@Entity
public class Strike extends PanacheEntityBase {
    /** What it was taken from. */
    public enum Source {
        READING,
        MARK,
        ANSWER,
        PERSON
    }

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    /** The report it was taken from, or null when a person flagged it without one. */
    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "report_id")
    public ReturnReport report;

    @Enumerated(EnumType.STRING)
    public Source source;

    @Column(name = "seen_at")
    public Instant seenAt;

    public String words;

    @Column(name = "raised_by")
    public String raisedBy;

    @Column(name = "raised_at")
    public Instant raisedAt;

    public static Optional<Strike> ofReport(UUID reportId) {
        return find("report.id", reportId).firstResultOptional();
    }
}
