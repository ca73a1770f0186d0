package dev.lapwing.people;

import io.quarkus.security.identity.AuthenticationRequestContext;
import io.quarkus.security.identity.IdentityProvider;
import io.quarkus.security.identity.SecurityIdentity;
import io.smallrye.mutiny.Uni;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;

@ApplicationScoped
class SessionIdentityProvider implements IdentityProvider<SessionRequest> {
    @Inject
    Sessions sessions;

    @Override
    public Class<SessionRequest> getRequestType() {
        return SessionRequest.class;
    }

    @Override
    public Uni<SecurityIdentity> authenticate(SessionRequest request, AuthenticationRequestContext context) {
        return context.runBlocking(() -> Identities.of(sessions.staffOf(request.token())));
    }
}
