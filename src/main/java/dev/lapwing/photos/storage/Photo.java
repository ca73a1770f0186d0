package dev.lapwing.photos.storage;

import dev.lapwing.fleet.Unit;
import dev.lapwing.photos.PhotoSource;
import dev.lapwing.platform.Refused;
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
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** A photo of a roof. The picture is a file; see {@code PhotoFiles}. */
@Entity
public class Photo extends PanacheEntityBase {
    private static final String WITH_UNIT = "from Photo p join fetch p.unit u join fetch u.depot where ";

    @Id
    public UUID id;

    @ManyToOne(fetch = FetchType.LAZY)
    @JoinColumn(name = "unit_id")
    public Unit unit;

    @Enumerated(EnumType.STRING)
    public PhotoSource source;

    /** The report or task that it was added to. */
    @Column(name = "source_id")
    public UUID sourceId;

    /** Its place among the photos of the report or task, from 0. */
    public int position;

    /** SHA-256 of the file as it was sent; tells a file that comes twice. */
    @Column(name = "sent_hash")
    public String sentHash;

    /** SHA-256 of the picture as it is kept; names its file. */
    public String hash;

    /** Bytes of the picture and its thumbnail. */
    public long bytes;

    public int width;
    public int height;

    /** Where on the roof, or null. */
    public String zone;

    /** Place of the finding it shows on its sheet, from 0, or null. */
    public Integer finding;

    /** When it was taken, by the camera's clock, or null. */
    @Column(name = "taken_at")
    public Instant takenAt;

    @Column(name = "added_at")
    public Instant addedAt;

    /** Sign-in name of who added it. */
    @Column(name = "added_by")
    public String addedBy;

    @Column(name = "removed_at")
    public Instant removedAt;

    @Column(name = "removed_by")
    public String removedBy;

    @Column(name = "removed_why")
    public String removedWhy;

    /** Returns the photo or refuses with "not found". */
    public static Photo require(UUID id) {
        return Photo.<Photo>find(WITH_UNIT + "p.id = ?1", id)
                .firstResultOptional()
                .orElseThrow(() -> Refused.notFound("photo " + id));
    }

    /** Returns the photos of a report or task in the order they were added, those that were taken away included. */
    public static List<Photo> of(UUID sourceId) {
        return list(WITH_UNIT + "p.sourceId = ?1 order by p.position", sourceId);
    }

    /** Returns the newest photos of a unit that are still there, the newest first. */
    public static List<Photo> ofUnit(UUID unitId, int most) {
        return find(WITH_UNIT + "p.unit.id = ?1 and p.removedAt is null order by p.addedAt desc, p.position", unitId)
                .range(0, most - 1)
                .list();
    }

    /** Returns the photo that a file became when it was sent before, even if it was taken away since. */
    public static Optional<Photo> sentBefore(UUID sourceId, String sentHash) {
        return find(WITH_UNIT + "p.sourceId = ?1 and p.sentHash = ?2", sourceId, sentHash)
                .firstResultOptional();
    }

    /** Returns the bytes kept of a unit, or with null of the whole fleet. */
    public static long bytesOf(UUID unitId) {
        return getEntityManager()
                .createQuery(
                        "select coalesce(sum(p.bytes), 0) from Photo p"
                                + " where p.removedAt is null and (:unit is null or p.unit.id = :unit)",
                        Long.class)
                .setParameter("unit", unitId)
                .getSingleResult();
    }

    /** Returns which of the hashes name a picture that is still there. */
    public static Set<String> stillThere(Collection<String> hashes) {
        if (hashes.isEmpty()) {
            return Set.of();
        }
        return getEntityManager()
                .createQuery(
                        "select distinct p.hash from Photo p where p.removedAt is null and p.hash in :hashes",
                        String.class)
                .setParameter("hashes", hashes)
                .getResultStream()
                .collect(Collectors.toSet());
    }
}
