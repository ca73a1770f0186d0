package dev.lapwing.web;

import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.core.http.Cookie;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.RequestScoped;
import jakarta.enterprise.inject.Instance;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import java.util.List;
import java.util.Optional;

/** What the frame of a page shows of the person, the depots and the last thing done. */
@Named("shell")
@RequestScoped
public class Shell {
    /** Attribute of an identity that came by the link of one job. */
    public static final String BY_LINK = "byLink";

    static final String DEPOT_COOKIE = "lapwing-depot";

    @Inject
    SecurityIdentity identity;

    @Inject
    RoutingContext request;

    @Inject
    DepotChoices depots;

    @Inject
    Instance<Notices> areas;

    private boolean flashTaken;

    public String username() {
        return identity.getPrincipal().getName();
    }

    public String fullName() {
        String name = identity.getAttribute("fullName");
        return name == null ? username() : name;
    }

    /** Returns whether the person came by the link of one job and is not signed in. */
    public boolean byLink() {
        return identity.getAttribute(BY_LINK) != null;
    }

    public boolean coordinator() {
        return identity.hasRole(Roles.COORDINATOR);
    }

    public boolean desk() {
        return identity.hasRole(Roles.DESK);
    }

    public boolean tech() {
        return identity.hasRole(Roles.TECH);
    }

    public List<DepotChoices.Choice> depots() {
        return depots.all();
    }

    /** Returns the code of the depot that the person works for now, or null for all of them. */
    public String depot() {
        return cookie(DEPOT_COOKIE)
                .filter(code -> depots().stream().anyMatch(depot -> depot.code().equals(code)))
                .orElse(null);
    }

    /** Returns what the coordinator has to see to; nothing for anybody else. */
    public List<Notices.Notice> notices() {
        return coordinator()
                ? areas.stream().flatMap(area -> area.now().stream()).toList()
                : List.of();
    }

    /** Returns the path and query of this page. */
    public String here() {
        return request.request().uri();
    }

    /** Returns what was said on the way here, or null. */
    public Flash flash() {
        Optional<Flash> said = cookie(Flash.COOKIE).flatMap(Flash::decoded);
        flashTaken = said.isPresent();
        return said.orElse(null);
    }

    boolean flashTaken() {
        return flashTaken;
    }

    private Optional<String> cookie(String name) {
        return Optional.ofNullable(request.request().getCookie(name)).map(Cookie::getValue);
    }
}
