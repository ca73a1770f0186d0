package dev.lapwing.people;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A request about one job that carries the token of that job's link; no other request is made into one. */
final class JobLinkRequest extends BaseAuthenticationRequest {
    static final String COOKIE = "lapwing-job";
    private static final Pattern SHEET =
            Pattern.compile("/tasks/([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})/sheet((?:/[a-z0-9-]+)*)");
    private static final String SIGNING = "/sign-off";

    private final String token;
    private final UUID job;
    private final boolean signing;
    private final String address;

    private JobLinkRequest(String token, UUID job, boolean signing, String address) {
        this.token = token;
        this.job = job;
        this.signing = signing;
        this.address = address;
    }

    /** Reads a call; empty unless its path, as sent, is plainly that of a job's sheet and a token came with it. */
    static Optional<JobLinkRequest> of(RoutingContext call) {
        Cookie cookie = call.request().getCookie(COOKIE);
        String path = call.request().path();
        if (cookie == null || cookie.getValue().isEmpty() || !path.equals(call.normalizedPath())) {
            return Optional.empty();
        }
        Matcher sheet = SHEET.matcher(path);
        if (!sheet.matches()) {
            return Optional.empty();
        }
        boolean signing =
                call.request().method() == HttpMethod.POST && sheet.group(2).equals(SIGNING);
        return Optional.of(
                new JobLinkRequest(cookie.getValue(), UUID.fromString(sheet.group(1)), signing, addressOf(call)));
    }

    static String addressOf(RoutingContext call) {
        return call.request().remoteAddress().hostAddress();
    }

    static String sheetOf(UUID job) {
        return "/tasks/" + job + "/sheet";
    }

    String token() {
        return token;
    }

    UUID job() {
        return job;
    }

    boolean signing() {
        return signing;
    }

    String address() {
        return address;
    }
}
