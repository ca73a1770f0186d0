package dev.lapwing.people.rota;

import dev.lapwing.people.domain.Swap;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** One person stands in for another at a depot on a date. */
@Entity
@Table(name = "duty_swap")
public class StoredSwap extends PanacheEntityBase {
    @Id
    UUID id;

    @Column(name = "depot_code")
    String depot;

    @Column(name = "on_date")
    LocalDate date;

    String giver;
    String taker;

    @Column(name = "noted_by")
    String notedBy;

    @Column(name = "noted_at")
    Instant notedAt;

    static List<StoredSwap> at(String depot, LocalDate from) {
        return list("depot = ?1 and date >= ?2 order by date, giver", depot, from);
    }

    Swap swap() {
        return new Swap(date, giver, taker);
    }
}
