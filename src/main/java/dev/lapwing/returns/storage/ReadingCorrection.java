package dev.lapwing.returns.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.FetchType;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.ManyToOne;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** What a person said about a note that its reading left open or had wrong. Never changed. */
@Entity
@Table(name = "reading_correction")
public class ReadingCorrection extends PanacheEntityBase {
    private static final Instant END_OF_TIME = Instant.parse("9999-12-31T00:00:00Z");
    private static final UUID LAST_ID = new UUID(-1, -1);

    /** How the correction came about. */
    public enum Source {
        /** The answer to the question that an unclear reading asks. */
        ANSWER,
        /** A person overruled a reading that had decided. */
        OVERRULED
    }

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "report_id")
    public ReturnReport report;

    /** Whether there was contact, as the person says. */
    public boolean contact;

    @Enumerated(EnumType.STRING)
    public Source source;

    @Column(name = "said_by")
    public String saidBy;

    public String why;

    @Column(name = "said_at")
    public Instant saidAt;

    /** Returns corrections with their reports and units, latest first, those that follow one of them if given. */
    public static List<ReadingCorrection> after(UUID last, int limit) {
        ReadingCorrection place = last == null ? null : findById(last);
        return find(
                        "from ReadingCorrection c join fetch c.report r join fetch r.unit u join fetch u.depot"
                                + " where c.saidAt < ?1 or c.saidAt = ?1 and c.id < ?2 order by c.saidAt desc, c.id desc",
                        place == null ? END_OF_TIME : place.saidAt,
                        place == null ? LAST_ID : place.id)
                .range(0, limit - 1)
                .list();
    }
}
