package dev.lapwing.web;

import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Objects;
import org.jboss.resteasy.reactive.RestForm;

/** The way in: each role starts where its day does. Keeps the depot a person chose. */
@Path("/")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
class StartPage {
    private static final int YEAR_SECONDS = 365 * 24 * 3600;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    RoutingContext request;

    @GET
    public Response start() {
        if (shell.coordinator()) {
            return pages.go("/due-list");
        }
        return pages.go(shell.desk() ? "/desk" : "/work");
    }

    @POST
    @Path("depot")
    public Response choose(@RestForm String code, @RestForm String back) {
        String kept = shell.depots().stream().anyMatch(depot -> Objects.equals(depot.code(), code)) ? code : "";
        return Response.seeOther(URI.create(withoutQuery(OwnPath.of(back, "/"))))
                .cookie(OwnCookie.lasting(
                        Shell.DEPOT_COOKIE,
                        kept,
                        YEAR_SECONDS,
                        request.request().isSSL()))
                .build();
    }

    /** Drops filters and places of the page that was left: they belonged to another depot. */
    private static String withoutQuery(String path) {
        int query = path.indexOf('?');
        return query < 0 ? path : path.substring(0, query);
    }
}
