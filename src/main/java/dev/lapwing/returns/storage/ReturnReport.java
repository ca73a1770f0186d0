package dev.lapwing.returns.storage;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.Refused;
import dev.lapwing.reading.ContactVerdict;
import dev.lapwing.reading.Evidence;
import dev.lapwing.reading.Reading;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.Convert;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.OrderColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/** What the desk recorded when a unit came back, and how its note was read. */
@Entity
@Table(name = "return_report")
public class ReturnReport extends PanacheEntityBase {
    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @Column(name = "returned_at")
    public Instant returnedAt;

    public String note;

    /** Language the desk gave, or null. */
    public String language;

    @Column(name = "odometer_km")
    public Integer odometerKm;

    /** Who told of it, as the desk wrote it, or null. */
    @Column(name = "reported_by")
    public String reportedBy;

    @Column(name = "filed_at")
    public Instant filedAt;

    @Column(name = "filed_by")
    public String filedBy;

    @ElementCollection
    @CollectionTable(name = "roof_mark", joinColumns = @JoinColumn(name = "report_id"))
    @OrderColumn(name = "position")
    public List<RoofMark> marks = new ArrayList<>();

    @Enumerated(EnumType.STRING)
    public ContactVerdict verdict;

    @Column(name = "reading_language")
    public String readingLanguage;

    public double score;
    public String reason;

    @Convert(converter = EvidenceColumn.class)
    public List<Evidence> evidence;

    /** Returns the report or refuses with "not found". */
    public static ReturnReport require(UUID id) {
        return ReturnReport.<ReturnReport>find(
                        "from ReturnReport r join fetch r.unit u join fetch u.depot where r.id = ?1", id)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("return report " + id));
    }

    public Reading reading() {
        return new Reading(verdict, readingLanguage, score, reason, evidence);
    }

    public void setReading(Reading reading) {
        verdict = reading.verdict();
        readingLanguage = reading.language();
        score = reading.score();
        reason = reading.reason();
        evidence = reading.evidence();
    }
}
