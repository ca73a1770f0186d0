package dev.lapwing.people;

import dev.lapwing.web.Shell;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.runtime.QuarkusPrincipal;
import io.quarkus.security.runtime.QuarkusSecurityIdentity;
import java.util.Optional;

/** Turns a person into what the framework knows a caller by. */
final class Identities {
    private Identities() {}

    static SecurityIdentity of(Optional<Staff> staff) {
        Staff known = known(staff);
        return named(known).addRole(known.role.word()).build();
    }

    /** Returns who came by the link of one job: a tech, whatever else they are. */
    static SecurityIdentity byLink(Optional<Staff> staff) {
        return named(known(staff))
                .addRole(Role.TECH.word())
                .addAttribute(Shell.BY_LINK, true)
                .build();
    }

    private static Staff known(Optional<Staff> staff) {
        return staff.orElseThrow(() -> new AuthenticationFailedException("not accepted"));
    }

    private static QuarkusSecurityIdentity.Builder named(Staff staff) {
        return QuarkusSecurityIdentity.builder()
                .setPrincipal(new QuarkusPrincipal(staff.username))
                .addAttribute("fullName", staff.fullName);
    }
}
