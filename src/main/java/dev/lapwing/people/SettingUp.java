package dev.lapwing.people;

import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.FoundingDepots;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;

/** Makes the first coordinator and the first depot, for whoever holds the one-time link. */
@ApplicationScoped
class SettingUp {
    private static final Duration VALID = Duration.ofHours(24);
    private static final Pattern USERNAME = Pattern.compile("[a-z0-9][a-z0-9._-]{1,39}");
    private static final Pattern MAIL = Pattern.compile("[^@\\s]+@[^@\\s]+");
    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_MAIL = 254;

    /** What the first coordinator typed of themselves. */
    record Person(String fullName, String username, String mail, String password) {}

    @Inject
    FoundingDepots depots;

    @Inject
    Passwords passwords;

    @Inject
    Secrets secrets;

    @Inject
    Clock clock;

    /** Returns whether nobody can sign in yet. */
    @Transactional
    boolean needed() {
        return Staff.count() == 0;
    }

    /** Makes a link's token; earlier ones end. */
    @Transactional
    String newToken() {
        SetupLink.deleteAll();
        String token = secrets.newToken();
        var link = new SetupLink();
        link.tokenHash = Secrets.hash(token);
        link.createdAt = clock.instant();
        link.expiresAt = link.createdAt.plus(VALID);
        link.persist();
        return token;
    }

    /** Refuses with "not found" unless the link can still be used. */
    @Transactional
    void require(String token) {
        usable(token);
    }

    /** Makes both and uses up the link; refuses the whole when a field is wrong. */
    @Transactional
    void setUp(String token, Person person, FoundingDepots.NewDepot depot) {
        usable(token);
        var errors = new FieldErrors();
        examine(person, errors);
        String depotCode = found(depot, errors);
        errors.refuseIfAny();
        Instant now = clock.instant();
        useUp(token, now);
        Staff first = coordinator(person, now);
        first.depots.add(depotCode);
        first.persist();
    }

    /** Adds the depot, or notes what is wrong with it; it goes again with the transaction when anything else is wrong. */
    private String found(FoundingDepots.NewDepot depot, FieldErrors errors) {
        try {
            return depots.found(depot);
        } catch (Refused refused) {
            if (refused.errors().isEmpty()) {
                throw refused;
            }
            refused.errors().forEach(error -> errors.check(false, error.field(), error.message()));
            return null;
        }
    }

    private void usable(String token) {
        SetupLink link = SetupLink.findById(Secrets.hash(token));
        boolean usable = link != null && link.usedAt == null && clock.instant().isBefore(link.expiresAt) && needed();
        if (!usable) {
            throw overAndDone();
        }
    }

    /** Of two that come at once with one link, the second is refused. */
    private static void useUp(String token, Instant now) {
        if (SetupLink.update("usedAt = ?1 where tokenHash = ?2 and usedAt is null", now, Secrets.hash(token)) != 1) {
            throw overAndDone();
        }
    }

    private static Refused overAndDone() {
        return Refused.notFound("set-up link like this any more; start the service again for a new one");
    }

    private static void examine(Person person, FieldErrors errors) {
        if (errors.present(person.fullName(), "fullName")) {
            errors.atMost(person.fullName().strip(), LONGEST_NAME, "fullName");
        }
        if (errors.present(person.username(), "username")) {
            errors.check(
                    USERNAME.matcher(person.username().strip()).matches(),
                    "username",
                    "must be 2 to 40 small letters, digits, dots, hyphens or underscores");
        }
        if (errors.present(person.mail(), "mail")) {
            String mail = person.mail().strip();
            errors.check(
                    mail.length() <= LONGEST_MAIL && MAIL.matcher(mail).matches(), "mail", "is not a mail address");
        }
        Passwords.examine(person.password(), errors);
    }

    private Staff coordinator(Person person, Instant now) {
        var staff = new Staff();
        staff.username = person.username().strip();
        staff.fullName = person.fullName().strip();
        staff.mail = person.mail().strip();
        staff.language = "en";
        staff.role = Role.COORDINATOR;
        staff.active = true;
        staff.createdAt = now;
        passwords.set(staff, person.password());
        return staff;
    }
}
