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
import java.util.List;
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

    /** What set a sweep off. */
    public enum Cause implements Worded {
        NIGHTLY("nightly"),
        /** A nightly one whose time passed while the service was down. */
        CAUGHT_UP("nightly, caught up"),
        ASKED("asked for"),
        IMPORT("after an import"),
        RULES("new rules"),
        /** The days of a depot begin at another instant, or its season changed. */
        DEPOT("depot changed"),
        DEMO("demo fleet");

        private final String word;

        Cause(String word) {
            this.word = word;
        }

        @Override
        public String word() {
            return word;
        }

        boolean byTheClock() {
            return this == NIGHTLY || this == CAUGHT_UP;
        }
    }

    private static final int LONGEST_ERROR = 2000;

    @Id
    public UUID id;

    @Enumerated(EnumType.STRING)
    public Cause cause;

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

    /** Units swept so far. */
    public int units;

    /** Units there were to sweep when it began. */
    @Column(name = "units_in_all")
    public int unitsInAll;

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

    /** Starts the counts anew: a run that was cut off is run again from the beginning. */
    public void startWith(int unitsToSweep) {
        state = State.RUNNING;
        unitsInAll = unitsToSweep;
        units = 0;
        created = 0;
        calledOff = 0;
        failures.clear();
    }

    /** Ends the run; a null error means that nothing ended it early. */
    public void end(State how, String why, Instant now) {
        state = how;
        error = why == null || why.length() <= LONGEST_ERROR ? why : why.substring(0, LONGEST_ERROR);
        finishedAt = now;
    }

    /** Returns how much is done, from 0 to 100. */
    public int percent() {
        return state == State.DONE || unitsInAll == 0 ? 100 : (int) Math.min(100, 100L * units / unitsInAll);
    }

    /** Returns the latest runs, newest first. */
    public static List<SweepRun> latest(int limit) {
        return find("order by startedAt desc, id").range(0, limit - 1).list();
    }

    /** Returns the runs by the clock of a depot that are not ended. */
    public static List<SweepRun> nightlyRunning(String depotCode) {
        return SweepRun.<SweepRun>list("depotCode = ?1 and state = ?2", depotCode, State.RUNNING).stream()
                .filter(run -> run.cause.byTheClock())
                .toList();
    }

    /** Forgets runs that began before an instant, with their failures. */
    public static void forgetBefore(Instant oldest) {
        SweepRun.<SweepRun>list("startedAt < ?1 and state <> ?2", oldest, State.RUNNING)
                .forEach(SweepRun::delete);
    }

    public static SweepRun require(UUID id) {
        return SweepRun.<SweepRun>findByIdOptional(id).orElseThrow(() -> Refused.notFound("sweep " + id));
    }
}
