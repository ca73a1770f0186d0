package dev.lapwing.people;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Secrets;
import io.quarkus.elytron.security.common.BcryptUtil;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.Optional;

/** Checks and makes passwords. They are stored as bcrypt hashes only. */
@ApplicationScoped
public class Passwords {
    private static final int COST = 10;
    private static final int SHORTEST = 10;
    /** bcrypt reads no further. */
    private static final int LONGEST_BYTES = 72;

    private static final int REMEMBERED = 1000;
    private static final Duration REMEMBERED_FOR = Duration.ofSeconds(60);

    /** Compared with when there is no such person, so that the answer takes as long. */
    private final String nobody;

    /** Scripts send their password with every call; hashing it anew each time would cost more than the call. */
    private final Cache<String, Boolean> accepted = Caffeine.newBuilder()
            .maximumSize(REMEMBERED)
            .expireAfterWrite(REMEMBERED_FOR)
            .build();

    private final String salt;

    @Inject
    Passwords(Secrets secrets) {
        salt = secrets.newToken();
        nobody = BcryptUtil.bcryptHash(secrets.newToken(), COST);
    }

    /** Returns the person if the password is theirs. */
    @Transactional
    Optional<Staff> check(String username, String password) {
        Optional<Staff> staff = Staff.activeByName(username);
        String hash = staff.map(found -> found.passwordHash).orElse(nobody);
        String remembered = Secrets.hash(salt + hash + password);
        if (accepted.getIfPresent(remembered) != null) {
            return staff;
        }
        if (!BcryptUtil.matches(password, hash)) {
            return Optional.empty();
        }
        accepted.put(remembered, true);
        return staff;
    }

    /** Sets a person's password. */
    public void set(Staff staff, String password) {
        staff.passwordHash = BcryptUtil.bcryptHash(password, COST);
    }

    /** Notes what is wrong with a new password. */
    static void examine(String password, FieldErrors errors) {
        if (errors.present(password, "password")
                && errors.check(
                        password.length() >= SHORTEST, "password", "must have at least " + SHORTEST + " characters")) {
            errors.check(
                    password.getBytes(StandardCharsets.UTF_8).length <= LONGEST_BYTES,
                    "password",
                    "is longer than " + LONGEST_BYTES + " bytes");
        }
    }
}
