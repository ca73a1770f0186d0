package dev.lapwing.people;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.util.Optional;

@ApplicationScoped
class JobLinkIdentityProvider implements IdentityProvider<JobLinkRequest> {
    @Inject
    JobLinks links;

    @Inject
    Guesses guesses;

    @Override
    public Class<JobLinkRequest> getRequestType() {
        return JobLinkRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(JobLinkRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> Identities.byLink(staffOf(request)));
    }

    @Transactional
    Optional<Staff> staffOf(JobLinkRequest request) {
        if (guesses.tooMany(request.address())) {
            return Optional.empty();
        }
        JobLinks.Judged judged = links.judge(request.token(), request.job(), request.ending());
        if (!judged.known()) {
            guesses.wrong(request.address());
        }
        return judged.opening().flatMap(link -> Staff.activeByName(link.username));
    }
}
