package dev.lapwing.people;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** A link that opens the sheet of one job to the tech who has it. Only the hash of its token is stored. */
@Entity
@Table(name = "job_link")
class JobLink extends PanacheEntityBase {
    @Id
    @Column(name = "token_hash")
    String tokenHash;

    @Column(name = "job_id")
    UUID jobId;

    String username;

    @Column(name = "made_at")
    Instant madeAt;

    @Column(name = "expires_at")
    Instant expiresAt;

    @Column(name = "revoked_at")
    Instant revokedAt;
}
