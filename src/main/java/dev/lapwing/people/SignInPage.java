package dev.lapwing.people;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.NewCookie;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;

/** The page on which people sign in, and the way out. */
@Path("/")
@PermitAll
@Produces(MediaType.TEXT_HTML)
class SignInPage {
    @CheckedTemplate(basePath = "people")
    static class Templates {
        static native TemplateInstance signIn(String next, String username, boolean refused);
    }

    @Inject
    Passwords passwords;

    @Inject
    Sessions sessions;

    @Inject
    RoutingContext request;

    @GET
    @Path("sign-in")
    public TemplateInstance form(@RestQuery String next) {
        return Templates.signIn(ownPath(next), "", false);
    }

    @POST
    @Path("sign-in")
    public Response signIn(@RestForm String username, @RestForm String password, @RestForm String next) {
        var staff = username == null || password == null
                ? Optional.<Staff>empty()
                : passwords.check(username.strip(), password);
        if (staff.isEmpty()) {
            String page = Templates.signIn(ownPath(next), username, true).render();
            return Response.status(401)
                    .entity(page)
                    .type(MediaType.TEXT_HTML_TYPE)
                    .build();
        }
        return Response.seeOther(URI.create(ownPath(next)))
                .cookie(cookie(sessions.open(staff.get().username), NewCookie.DEFAULT_MAX_AGE))
                .build();
    }

    @POST
    @Path("sign-out")
    public Response signOut(@CookieParam(SignInMechanism.COOKIE) String token) {
        if (token != null) {
            sessions.end(token);
        }
        return Response.seeOther(URI.create("/sign-in")).cookie(cookie("", 0)).build();
    }

    private NewCookie cookie(String value, int maxAge) {
        return new NewCookie.Builder(SignInMechanism.COOKIE)
                .value(value)
                .path("/")
                .maxAge(maxAge)
                .httpOnly(true)
                .secure(request.request().isSSL())
                .sameSite(NewCookie.SameSite.LAX)
                .build();
    }

    /** Keeps the way back inside the service. */
    private static String ownPath(String next) {
        return next != null && next.startsWith("/") && !next.startsWith("//") && !next.contains("\\") ? next : "/";
    }
}
