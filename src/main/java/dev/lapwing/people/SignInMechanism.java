package dev.lapwing.people;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.credential.PasswordCredential;
import io.quarkus.security.identity.IdentityProviderManager;
import io.quarkus.security.identity.SecurityIdentity;
import io.quarkus.security.identity.request.AuthenticationRequest;
import io.quarkus.security.identity.request.UsernamePasswordAuthenticationRequest;
import io.quarkus.vertx.http.runtime.security.ChallengeData;
import io.quarkus.vertx.http.runtime.security.HttpAuthenticationMechanism;
import io.smallrye.mutiny.Uni;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;
import java.util.Set;

/**
 * Recognises who calls: scripts by HTTP Basic, browsers by their session cookie, and on the sheet of one job whoever
 * came by its link.
 */
@ApplicationScoped
class SignInMechanism implements HttpAuthenticationMechanism {
    static final String COOKIE = "lapwing-session";
    private static final String BASIC = "basic ";

    @Override
    public Uni<SecurityIdentity> authenticate(RoutingContext call, IdentityProviderManager providers) {
        String header = call.request().getHeader("Authorization");
        if (header != null && header.regionMatches(true, 0, BASIC, 0, BASIC.length())) {
            return basic(header.substring(BASIC.length()).strip())
                    .map(providers::authenticate)
                    .orElseGet(() -> Uni.createFrom().failure(new AuthenticationFailedException("malformed header")));
        }
        Uni<SecurityIdentity> session = bySession(call, providers);
        return JobLinkRequest.of(call)
                .map(link -> session.onFailure(AuthenticationFailedException.class)
                        .recoverWithNull()
                        .onItem()
                        .ifNull()
                        .switchTo(() -> providers.authenticate(link)))
                .orElse(session);
    }

    private static Uni<SecurityIdentity> bySession(RoutingContext call, IdentityProviderManager providers) {
        Cookie cookie = call.request().getCookie(COOKIE);
        return cookie != null && !cookie.getValue().isEmpty()
                ? providers.authenticate(new SessionRequest(cookie.getValue()))
                : Uni.createFrom().nullItem();
    }

    private static Optional<UsernamePasswordAuthenticationRequest> basic(String encoded) {
        String decoded;
        try {
            decoded = new String(Base64.getDecoder().decode(encoded), StandardCharsets.UTF_8);
        } catch (IllegalArgumentException notBase64) {
            return Optional.empty();
        }
        int colon = decoded.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        var password = new PasswordCredential(decoded.substring(colon + 1).toCharArray());
        return Optional.of(new UsernamePasswordAuthenticationRequest(decoded.substring(0, colon), password));
    }

    @Override
    public Uni<ChallengeData> getChallenge(RoutingContext call) {
        return Uni.createFrom().item(new ChallengeData(401, "WWW-Authenticate", "Basic realm=\"Lapwing\""));
    }

    @Override
    public Set<Class<? extends AuthenticationRequest>> getCredentialTypes() {
        return Set.of(UsernamePasswordAuthenticationRequest.class, SessionRequest.class, JobLinkRequest.class);
    }
}
