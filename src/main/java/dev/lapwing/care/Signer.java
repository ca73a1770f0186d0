package dev.lapwing.care;

import dev.lapwing.web.Roles;
import java.util.Set;

/**
 * The signed-in person who puts their name to something.
 *
 * @param username sign-in name
 * @param roles words of the person's roles
 */
public record Signer(String username, Set<String> roles) {
    public Signer {
        roles = Set.copyOf(roles);
    }

    public boolean coordinator() {
        return roles.contains(Roles.COORDINATOR);
    }
}
