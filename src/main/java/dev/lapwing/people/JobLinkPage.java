package dev.lapwing.people;

import dev.lapwing.web.OwnCookie;
import dev.lapwing.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.time.Clock;
import java.time.Duration;
import org.jboss.resteasy.reactive.RestPath;

/** The address that stands in letters: takes its reader to the sheet of one job. */
@Path("/job/{token}")
@PermitAll
@Blocking
class JobLinkPage {
    static final String PATH = "/job/";
    private static final int TOO_MANY = 429;

    @CheckedTemplate(basePath = "people")
    static class Templates {
        static native TemplateInstance jobLink(boolean tooMany);
    }

    @Inject
    JobLinks links;

    @Inject
    Guesses guesses;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @Inject
    RoutingContext request;

    /** Opens the sheet, or answers the same to every link that opens none, whyever it does not. */
    @GET
    public Response open(@RestPath String token) {
        String address = JobLinkRequest.addressOf(request);
        if (guesses.tooMany(address)) {
            return Response.fromResponse(pages.show(TOO_MANY, Templates.jobLink(true)))
                    .header("Retry-After", Guesses.WINDOW.toSeconds())
                    .build();
        }
        JobLinks.Judged judged = links.judge(token);
        if (!judged.known()) {
            guesses.wrong(address);
        }
        return judged.opening()
                .map(link -> toSheet(link, token))
                .orElseGet(() -> pages.show(404, Templates.jobLink(false)));
    }

    /** The browser sends the token to the addresses of this job only, and of those the sheet alone takes it. */
    private Response toSheet(JobLink link, String token) {
        String job = JobLinkRequest.jobOf(link.jobId);
        int seconds = (int) Duration.between(clock.instant(), link.expiresAt).toSeconds();
        boolean secure = request.request().isSSL();
        return Response.seeOther(URI.create(job + "/sheet"))
                .cookie(OwnCookie.within(job, JobLinkRequest.COOKIE, token, seconds, secure))
                .header("Cache-Control", "no-store")
                .header("Referrer-Policy", "no-referrer")
                .build();
    }
}
