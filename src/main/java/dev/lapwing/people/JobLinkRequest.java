package dev.lapwing.people;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;
import io.vertx.core.http.Cookie;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A request that belongs to the sheet of one job and carries the token of that job's link; no other request is made into
 * one.
 */
final class JobLinkRequest extends BaseAuthenticationRequest {
    static final String COOKIE = "lapwing-job";
    /** The sheet, what its parts send, and the way to stop. */
    private static final Pattern OF_THE_SHEET = Pattern.compile(
            "/tasks/([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})/((?:sheet|roof)(?:/[a-z-]+)?|stop-and-refer)");

    /** What ends the job. */
    private static final Set<String> ENDS = Set.of("sheet/sign-off", "stop-and-refer");

    private final String token;
    private final UUID job;
    private final boolean ending;
    private final String address;

    private JobLinkRequest(String token, UUID job, boolean ending, String address) {
        this.token = token;
        this.job = job;
        this.ending = ending;
        this.address = address;
    }

    /** Reads a call; empty unless its path, as sent, is plainly that of a job's sheet and a token came with it. */
    static Optional<JobLinkRequest> of(RoutingContext call) {
        Cookie cookie = call.request().getCookie(COOKIE);
        String path = call.request().path();
        if (cookie == null || cookie.getValue().isEmpty() || !path.equals(call.normalizedPath())) {
            return Optional.empty();
        }
        Matcher sheet = OF_THE_SHEET.matcher(path);
        if (!sheet.matches()) {
            return Optional.empty();
        }
        boolean ending = call.request().method() == HttpMethod.POST && ENDS.contains(sheet.group(2));
        return Optional.of(
                new JobLinkRequest(cookie.getValue(), UUID.fromString(sheet.group(1)), ending, addressOf(call)));
    }

    static String addressOf(RoutingContext call) {
        return call.request().remoteAddress().hostAddress();
    }

    static String jobOf(UUID job) {
        return "/tasks/" + job;
    }

    String token() {
        return token;
    }

    UUID job() {
        return job;
    }

    /** Returns whether it ends the job; then it may come once more after the job has ended, for its answer. */
    boolean ending() {
        return ending;
    }

    String address() {
        return address;
    }
}
