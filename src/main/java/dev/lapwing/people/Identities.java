package dev.lapwing.people;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import java.util.Optional;

/** Turns a person into what the framework knows a caller by. */
final class Identities {
    private Identities() {}

    static SecurityIdentity of(Optional<Staff> staff) {
        Staff known = staff.orElseThrow(() -> new AuthenticationFailedException("not accepted"));
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(known.username))
                .addRole(known.role.word())
                .addAttribute("fullName", known.fullName)
                .build();
    }
}
