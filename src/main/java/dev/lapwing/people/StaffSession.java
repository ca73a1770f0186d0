package dev.lapwing.people;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** One browser in which a person is signed in. The token itself is only in that browser's cookie. */
@Entity
@Table(name = "staff_session")
class StaffSession extends PanacheEntityBase {
    @Id
    @Column(name = "token_hash")
    String tokenHash;

    String username;

    @Column(name = "created_at")
    Instant createdAt;

    @Column(name = "last_seen_at")
    Instant lastSeenAt;

    @Column(name = "expires_at")
    Instant expiresAt;
}
