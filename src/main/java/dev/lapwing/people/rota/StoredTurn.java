package dev.lapwing.people.rota;

import dev.lapwing.people.domain.DutyTurn;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.UUID;

/** A weekly turn of duty at a depot. */
@Entity
@Table(name = "duty_turn")
public class StoredTurn extends PanacheEntityBase {
    @Id
    UUID id;

    @Column(name = "depot_code")
    String depot;

    /** 1 for Monday to 7 for Sunday. */
    int weekday;

    String starts;
    String ends;
    String username;
    int place;

    static List<StoredTurn> at(String depot) {
        return list("depot = ?1 order by weekday, place, starts, username", depot);
    }

    DutyTurn turn() {
        return new DutyTurn(DayOfWeek.of(weekday), LocalTime.parse(starts), LocalTime.parse(ends), username, place);
    }
}
