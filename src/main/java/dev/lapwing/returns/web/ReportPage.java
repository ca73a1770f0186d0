package dev.lapwing.returns.web;

import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.returns.application.AnsweringQuestions;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** What follows from a report, in words that the desk can read out, and the answer to an open question. */
@Path("/desk/reports/{id}")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK})
class ReportPage {
    @CheckedTemplate(basePath = "returns")
    static class Templates {
        static native TemplateInstance report(ReportView view, FieldMessages wrong, AnswerForm typed);
    }

    /** The answer form as typed. */
    record AnswerForm(String contact, String by, String why) {}

    @Inject
    ReportViews views;

    @Inject
    AnsweringQuestions answering;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @Transactional
    public Response show(@RestPath String id) {
        return page(200, id, FieldMessages.NONE, new AnswerForm(null, shell.fullName(), null));
    }

    @POST
    @Path("answer")
    public Response answer(@RestPath String id, @RestForm String contact, @RestForm String by, @RestForm String why) {
        Boolean touched = "yes".equals(contact) ? Boolean.TRUE : "no".equals(contact) ? Boolean.FALSE : null;
        try {
            answering.answer(reportId(id), new AnsweringQuestions.Answer(touched, by, why));
            return pages.go("/desk/reports/" + reportId(id), "The answer is noted");
        } catch (Refused refused) {
            if (refused.kind() == Refused.Kind.INVALID) {
                return page(400, id, FieldMessages.of(refused), new AnswerForm(contact, by, why));
            }
            return pages.goRefused("/desk/reports/" + reportId(id), refused.getMessage());
        }
    }

    private Response page(int status, String id, FieldMessages wrong, AnswerForm typed) {
        return pages.show(status, Templates.report(views.of(reportId(id)), wrong, typed));
    }

    private static UUID reportId(String id) {
        return Identifier.of("return report", id);
    }
}
