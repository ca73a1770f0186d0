package dev.lapwing.people;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;

/** The way to make the first coordinator: works once and for a day. Only the hash of its token is stored. */
@Entity
@Table(name = "setup_link")
class SetupLink extends PanacheEntityBase {
    @Id
    @Column(name = "token_hash")
    String tokenHash;

    @Column(name = "created_at")
    Instant createdAt;

    @Column(name = "expires_at")
    Instant expiresAt;

    @Column(name = "used_at")
    Instant usedAt;
}
