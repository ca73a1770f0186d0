package dev.lapwing.people.rota;

import dev.lapwing.people.domain.Absence;
import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.Collection;
import java.util.List;
import java.util.UUID;

/** Days on which a person takes no turn anywhere. */
@Entity
@Table(name = "duty_absence")
public class StoredAbsence extends PanacheEntityBase {
    @Id
    UUID id;

    String username;

    @Column(name = "from_on")
    LocalDate from;

    @Column(name = "until_on")
    LocalDate until;

    String why;

    /** Returns the absences of these people that last to a day or longer. */
    static List<StoredAbsence> of(Collection<String> usernames, LocalDate day) {
        return usernames.isEmpty()
                ? List.of()
                : list("username in ?1 and until >= ?2 order by from, username", usernames, day);
    }

    Absence absence() {
        return new Absence(username, from, until);
    }
}
