package dev.lapwing.care.storage;

import dev.lapwing.care.domain.RuleTrial;
import dev.lapwing.platform.Refused;
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

/** One trial of other care rules on the whole fleet, and how far it is. */
@Entity
@Table(name = "rule_trial")
public class TrialRun extends PanacheEntityBase {
    private static final int LONGEST_ERROR = 2000;

    @Id
    public UUID id;

    @Enumerated(EnumType.STRING)
    public SweepRun.State state;

    /** The rules that are tried, as JSON. */
    public String content;

    /** Number of the edition they are tried against. */
    public int against;

    @Column(name = "asked_by")
    public String askedBy;

    @Column(name = "asked_at")
    public Instant askedAt;

    @Column(name = "finished_at")
    public Instant finishedAt;

    @Column(name = "units_in_all")
    public int unitsInAll;

    public int units;
    public int different;
    public int earlier;
    public int later;
    public int created;

    @Column(name = "called_off")
    public int calledOff;

    /** Units that could not be tried. */
    public int failed;

    /** What ended it early, or null. */
    public String error;

    public static TrialRun require(UUID id) {
        return TrialRun.<TrialRun>findByIdOptional(id).orElseThrow(() -> Refused.notFound("trial " + id));
    }

    /** Returns the latest trials, newest first. */
    public static List<TrialRun> latest(int limit) {
        return find("order by askedAt desc, id").range(0, limit - 1).list();
    }

    /** Takes the counts of the units tried so far. */
    public void take(RuleTrial.Totals totals, int couldNotBeTried) {
        units = Math.toIntExact(totals.units()) + couldNotBeTried;
        different = Math.toIntExact(totals.different());
        earlier = Math.toIntExact(totals.earlier());
        later = Math.toIntExact(totals.later());
        created = Math.toIntExact(totals.created());
        calledOff = Math.toIntExact(totals.calledOff());
        failed = couldNotBeTried;
    }

    /** Ends the trial; a null error means that nothing ended it early. */
    public void end(SweepRun.State how, String why, Instant now) {
        state = how;
        error = why == null || why.length() <= LONGEST_ERROR ? why : why.substring(0, LONGEST_ERROR);
        finishedAt = now;
    }

    /** Returns how much is done, from 0 to 100. */
    public int percent() {
        return state == SweepRun.State.DONE || unitsInAll == 0 ? 100 : (int) Math.min(100, 100L * units / unitsInAll);
    }

    /** Forgets trials from before an instant, with what they listed. */
    public static void forgetBefore(Instant oldest) {
        TrialChange.delete("trialId in (select t.id from TrialRun t where t.askedAt < ?1)", oldest);
        delete("askedAt < ?1", oldest);
    }
}
