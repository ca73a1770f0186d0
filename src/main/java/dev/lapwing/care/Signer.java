package dev.lapwing.care;

import dev.lapwing.web.Roles;
import java.util.Set;

/**
 * The person who puts their name to something.
 *
 * @param username sign-in name
 * @param roles words of the person's roles
 * @param byLink whether they came by the link of one job and are not signed in
 */
public record Signer(String username, Set<String> roles, boolean byLink) {
    public Signer {
        roles = Set.copyOf(roles);
    }

    /** A person who is signed in. */
    public Signer(String username, Set<String> roles) {
        this(username, roles, false);
    }

    public boolean coordinator() {
        return roles.contains(Roles.COORDINATOR);
    }
}
