package dev.lapwing.web;

import dev.lapwing.platform.Refused;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.inject.Inject;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerRequestFilter;

/**
 * Refuses requests that change something when a page of another site sent them with a person's cookie.
 *
 * <p>Browsers say where a request comes from (Fetch Metadata, and Origin in older ones); programs say neither and carry
 * their own credentials, so what comes without both is let through.
 */
class OwnSiteOnly {
    private static final Set<String> SAFE = Set.of("GET", "HEAD", "OPTIONS");
    private static final Set<String> OWN = Set.of("same-origin", "none");

    @ConfigProperty(name = "lapwing.public-url", defaultValue = "http://localhost:8080")
    String publicUrl;

    @Inject
    RoutingContext context;

    @ServerRequestFilter(preMatching = true)
    void check() {
        HttpServerRequest request = context.request();
        if (SAFE.contains(request.method().name()) || request.getHeader("Authorization") != null) {
            return;
        }
        String site = request.getHeader("Sec-Fetch-Site");
        String origin = request.getHeader("Origin");
        boolean own = site != null ? OWN.contains(site) : origin == null || ownOrigin(origin, request);
        if (!own) {
            throw Refused.forbidden("The request came from a page of another site");
        }
    }

    private boolean ownOrigin(String origin, HttpServerRequest request) {
        return origin.equals(publicUrl) || origin.equals(request.scheme() + "://" + request.authority());
    }
}
