package dev.lapwing.alerts.rain;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** What a coordinator entered about the next rain at a depot. It goes before the feed for as long as it holds. */
@Entity
@Table(name = "rain_by_hand")
class RainByHand extends PanacheEntityBase {
    @Id
    @Column(name = "depot_code")
    String depot;

    /** When rain is expected, or null when none is while this holds. */
    @Column(name = "rain_at")
    Instant rainAt;

    @Column(name = "holds_until")
    Instant holdsUntil;

    @Column(name = "entered_by")
    String enteredBy;

    @Column(name = "entered_at")
    Instant enteredAt;
}
