package dev.lapwing.web;

import dev.lapwing.platform.FieldError;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.core.http.HttpMethod;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes refusals in the form their reader expects. */
@ApplicationScoped
class ProblemAnswers {
    @CheckedTemplate(basePath = "web")
    static class Templates {
        static native TemplateInstance problem(int status, String title, String detail);
    }

    @Inject
    RoutingContext request;

    Response answer(int status, String detail, List<FieldError> errors) {
        if (forPeople()) {
            String page =
                    Templates.problem(status, Statuses.phrase(status), detail).render();
            return Response.status(status)
                    .type(MediaType.TEXT_HTML_TYPE)
                    .entity(page)
                    .build();
        }
        return Response.status(status)
                .type(Problem.MEDIA_TYPE)
                .entity(Problem.of(status, detail, errors))
                .build();
    }

    /** Sends people to the sign-in page, and asks programs for their credentials. */
    Response signIn(String detail) {
        if (forPeople()) {
            String back = URLEncoder.encode(wayBack(), StandardCharsets.UTF_8);
            return Response.seeOther(URI.create("/sign-in?next=" + back)).build();
        }
        return Response.status(401)
                .header(HttpHeaders.WWW_AUTHENTICATE, "Basic realm=\"Lapwing\", charset=\"UTF-8\"")
                .type(Problem.MEDIA_TYPE)
                .entity(Problem.of(401, detail, List.of()))
                .build();
    }

    /** Returns where to go on after signing in: a form that was sent cannot be opened as a page, so its sender starts anew. */
    private String wayBack() {
        return request.request().method() == HttpMethod.GET ? request.request().uri() : "/";
    }

    private boolean forPeople() {
        String accept = request.request().getHeader("Accept");
        return !request.normalizedPath().startsWith("/api/") && accept != null && accept.contains("text/html");
    }
}
