package dev.lapwing.care.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.UUID;

/** What tried rules would change for one unit. */
@Entity
@Table(name = "rule_trial_change")
@IdClass(TrialChange.Key.class)
public class TrialChange extends PanacheEntityBase {
    /** The trial and the place in its list. */
    public static class Key implements Serializable {
        private static final long serialVersionUID = 1L;
        UUID trialId;
        int position;

        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && position == key.position && Objects.equals(trialId, key.trialId);
        }

        @Override
        public int hashCode() {
            return Objects.hash(trialId, position);
        }
    }

    @Id
    @Column(name = "trial_id")
    public UUID trialId;

    /** Its place in the list, from 1. */
    @Id
    public int position;

    @Column(name = "unit_number")
    public String unit;

    @Column(name = "depot_code")
    public String depot;

    /** When its next work is due by the rules in force, or null when there is none. */
    @Column(name = "due_now")
    public LocalDate dueNow;

    /** When it would be due by the tried rules, or null when there would be none. */
    @Column(name = "due_tried")
    public LocalDate dueTried;

    /** Tasks the tried rules would make. */
    public int created;

    /** Tasks they would call off. */
    @Column(name = "called_off")
    public int calledOff;

    /** Why the next work would be due, or what kept the unit from being tried. */
    public String why;

    /** Returns a page of a trial's list that follows a place. */
    public static List<TrialChange> after(UUID trial, int position, int limit) {
        return find("trialId = ?1 and position > ?2 order by position", trial, position)
                .range(0, limit - 1)
                .list();
    }

    public static long countOf(UUID trial) {
        return count("trialId", trial);
    }
}
