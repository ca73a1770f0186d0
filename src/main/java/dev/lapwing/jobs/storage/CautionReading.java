package dev.lapwing.jobs.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.hibernate.annotations.Immutable;

/** That a person read the cautions of a sheet. Never changed. */
@Entity
@Immutable
@Table(name = "job_caution_reading")
public class CautionReading extends PanacheEntityBase {
    @Id
    public UUID id;

    @Column(name = "task_id")
    public UUID taskId;

    public String username;

    /** The ids of the cautions, with a space between each. */
    public String cautions;

    @Column(name = "read_at")
    public Instant readAt;

    @Column(name = "by_link")
    public boolean byLink;

    /** Returns whether a person has read all of these cautions at once for a task. */
    public static boolean covers(UUID taskId, String username, Collection<String> ids) {
        List<CautionReading> readings = list("taskId = ?1 and username = ?2", taskId, username);
        return readings.stream()
                .anyMatch(reading -> Set.of(reading.cautions.split(" ")).containsAll(ids));
    }
}
