package dev.lapwing.care.storage;

import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Worded;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.MapKeyColumn;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** One sweep over the units of one depot or of all, and how far it is. */
@Entity
@Table(name = "sweep_run")
public class SweepRun extends PanacheEntityBase {
    /** How a sweep stands. */
    public enum State implements Worded {
        RUNNING("running"),
        DONE("done"),
        FAILED("failed");

        private final String word;

        State(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }
    }

    @Id
    public UUID id;

    /** Code of the depot, or null for all. */
    @Column(name = "depot_code")
    public String depotCode;

    @Enumerated(EnumType.STRING)
    public State state;

    @Column(name = "asked_by")
    public String askedBy;

    @Column(name = "started_at")
    public Instant startedAt;

    @Column(name = "finished_at")
    public Instant finishedAt;

    public int units;
    public int created;

    @Column(name = "called_off")
    public int calledOff;

    /** What ended it early, or null. */
    public String error;

    /** What went wrong with single units, by number; the others were swept all the same. */
    @ElementCollection
    @CollectionTable(name = "sweep_failure", joinColumns = @JoinColumn(name = "sweep_id"))
    @MapKeyColumn(name = "unit_number")
    @Column(name = "message")
    public Map<String, String> failures = new TreeMap<>();

    public static SweepRun require(UUID id) {
        return SweepRun.<SweepRun>findByIdOptional(id).orElseThrow(() -> Refused.notFound("sweep " + id));
    }
}
