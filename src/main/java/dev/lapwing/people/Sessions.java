package dev.lapwing.people;

import dev.lapwing.platform.Secrets;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Opens, finds and ends the sessions of signed-in people. */
@ApplicationScoped
class Sessions {
    /** A click within this time of the last one is not written down again. */
    private static final Duration COARSE = Duration.ofMinutes(1);

    @ConfigProperty(name = "lapwing.session.idle", defaultValue = "12h")
    Duration idle;

    @ConfigProperty(name = "lapwing.session.longest", defaultValue = "7d")
    Duration longest;

    @Inject
    Secrets secrets;

    @Inject
    Clock clock;

    /** Opens a session and returns its token, which is kept nowhere else. */
    @Transactional
    String open(String username) {
        String token = secrets.newToken();
        Instant now = clock.instant();
        StaffSession.delete("expiresAt < ?1", now);
        var session = new StaffSession();
        session.tokenHash = Secrets.hash(token);
        session.username = username;
        session.createdAt = now;
        session.lastSeenAt = now;
        session.expiresAt = now.plus(longest);
        session.persist();
        return token;
    }

    /** Returns who is signed in with this token, or empty when the session is unknown or over. */
    @Transactional
    Optional<Staff> staffOf(String token) {
        Instant now = clock.instant();
        StaffSession session = StaffSession.findById(Secrets.hash(token));
        if (session == null || now.isAfter(session.expiresAt) || now.isAfter(session.lastSeenAt.plus(idle))) {
            return Optional.empty();
        }
        if (now.isAfter(session.lastSeenAt.plus(COARSE))) {
            session.lastSeenAt = now;
        }
        return Staff.activeByName(session.username);
    }

    @Transactional
    void end(String token) {
        StaffSession.deleteById(Secrets.hash(token));
    }
}
