package dev.lapwing.care.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.ReleasingHolds;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

@Path("/api/holds")
class HoldResource {
    record Release(String by, String statement) {}

    @Inject
    ReleasingHolds releasing;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<HoldAnswer> list(@RestQuery String state, @RestQuery Integer limit, @RestQuery String after) {
        var errors = new FieldErrors();
        HoldState wanted = errors.word(HoldState.class, state, "state").orElse(null);
        errors.refuseIfAny();
        int size = Page.limit(limit);
        UUID last = after == null ? null : Identifier.of("hold", after);
        List<Hold> found = Hold.after(last, wanted, size + 1);
        return Page.of(found, size, Hold.countIn(wanted), hold -> hold.id.toString())
                .map(HoldAnswer::of);
    }

    @POST
    @Path("/{id}/release")
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public HoldAnswer release(@RestPath String id, Release release) {
        Release asked = release == null ? new Release(null, null) : release;
        var signer = new Signer(identity.getPrincipal().getName(), identity.getRoles());
        return HoldAnswer.of(releasing.release(Identifier.of("hold", id), signer, asked.by(), asked.statement()));
    }
}
