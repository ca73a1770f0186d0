package dev.lapwing.returns.web;

import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.returns.storage.AskedQuestion;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestPath;

/** The way from a question, as a hold names it, to the report that raised it. */
@Path("/desk/questions/{id}")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK})
class QuestionPage {
    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response show(@RestPath String id) {
        AskedQuestion question = AskedQuestion.findById(Identifier.of("question", id));
        if (question == null) {
            throw Refused.notFound("question " + id);
        }
        return pages.go("/desk/reports/" + question.report.id);
    }
}
