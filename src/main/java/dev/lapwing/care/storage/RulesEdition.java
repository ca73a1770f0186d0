package dev.lapwing.care.storage;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;

/** A set of care rules that was taken into force. The one with the highest number is in force. */
@Entity
@Table(name = "care_rules_edition")
public class RulesEdition extends PanacheEntityBase {
    /** Counts up from 1. */
    @Id
    public int number;

    /** The rules as they were given, as JSON. */
    public String content;

    /** Whether they came from the file beside the service, not from a person. */
    @Column(name = "from_file")
    public boolean fromFile;

    @Column(name = "adopted_at")
    public Instant adoptedAt;

    @Column(name = "adopted_by")
    public String adoptedBy;

    public String reason;

    /** Returns the number of the edition in force, or 0 when there is none yet. */
    public static int latestNumber() {
        return getEntityManager()
                .createQuery("select coalesce(max(e.number), 0) from RulesEdition e", Integer.class)
                .getSingleResult();
    }

    /** Returns every edition, oldest first. */
    public static List<RulesEdition> inOrder() {
        return list("order by number");
    }

    public static RulesEdition require(int number) {
        return RulesEdition.<RulesEdition>findByIdOptional(number).orElseThrow();
    }

    /** Stores an edition unless another node has stored one of the same number; returns whether it was stored. */
    public boolean keep() {
        return getEntityManager()
                        .createNativeQuery("""
                        insert into care_rules_edition (number, content, from_file, adopted_at, adopted_by, reason)
                        values (:number, :content, :fromFile, :at, :by, :reason) on conflict do nothing
                        """)
                        .setParameter("number", number)
                        .setParameter("content", content)
                        .setParameter("fromFile", fromFile)
                        .setParameter("at", adoptedAt)
                        .setParameter("by", adoptedBy)
                        .setParameter("reason", reason)
                        .executeUpdate()
                == 1;
    }
}
