package dev.lapwing.people;

import dev.lapwing.web.OwnCookie;
import dev.lapwing.web.OwnPath;
import dev.lapwing.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.CookieParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Optional;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;

/** The page on which people sign in, and the way out. */
@Path("/")
@PermitAll
@Blocking
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
    Pages pages;

    @Inject
    RoutingContext request;

    @GET
    @Path("sign-in")
    public Response form(@RestQuery String next) {
        return pages.show(Templates.signIn(OwnPath.of(next, "/"), "", false));
    }

    @POST
    @Path("sign-in")
    public Response signIn(@RestForm String username, @RestForm String password, @RestForm String next) {
        var staff = username == null || password == null
                ? Optional.<Staff>empty()
                : passwords.check(username.strip(), password);
        if (staff.isEmpty()) {
            String typed = username == null ? "" : username;
            return pages.show(401, Templates.signIn(OwnPath.of(next, "/"), typed, true));
        }
        String token = sessions.open(staff.get().username);
        return Response.seeOther(URI.create(OwnPath.of(next, "/")))
                .cookie(OwnCookie.session(SignInMechanism.COOKIE, token, secure()))
                .build();
    }

    @POST
    @Path("sign-out")
    public Response signOut(@CookieParam(SignInMechanism.COOKIE) String token) {
        if (token != null) {
            sessions.end(token);
        }
        return Response.seeOther(URI.create("/sign-in"))
                .cookie(OwnCookie.lasting(SignInMechanism.COOKIE, "", 0, secure()))
                .build();
    }

    private boolean secure() {
        return request.request().isSSL();
    }
}
