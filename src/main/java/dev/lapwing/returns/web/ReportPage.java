package dev.lapwing.returns.web;

import dev.lapwing.photos.web.PhotoUploads;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.returns.application.AnsweringQuestions;
import dev.lapwing.returns.application.DeskAnswer;
import dev.lapwing.returns.application.OverrulingReadings;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** What follows from a report, in words that the desk can read out, and the answer to an open question. */
@Path("/desk/reports/{id}")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK})
class ReportPage {
    @CheckedTemplate(basePath = "returns")
    static class Templates {
        static native TemplateInstance report(ReportView view, FieldMessages wrong, AnswerForm typed);
    }

    /** The answer form as typed. */
    record AnswerForm(String contact, String by, String why) {
        DeskAnswer answer() {
            Boolean touched = "yes".equals(contact) ? Boolean.TRUE : "no".equals(contact) ? Boolean.FALSE : null;
            return new DeskAnswer(touched, by, why);
        }
    }

    @Inject
    ReportViews views;

    @Inject
    AnsweringQuestions answering;

    @Inject
    OverrulingReadings overruling;

    @Inject
    PhotoUploads uploads;

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
        var typed = new AnswerForm(contact, by, why);
        return said(id, typed, () -> answering.answer(reportId(id), typed.answer()), "The answer is noted");
    }

    @POST
    @Path("overrule")
    public Response overrule(@RestPath String id, @RestForm String contact, @RestForm String by, @RestForm String why) {
        var typed = new AnswerForm(contact, by, why);
        return said(id, typed, () -> overruling.overrule(reportId(id), typed.answer()), "The correction is noted");
    }

    @POST
    @Path("photos")
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    public Response photos(@RestPath String id, @RestForm(FileUpload.ALL) List<FileUpload> files) {
        String here = "/desk/reports/" + reportId(id);
        try {
            int kept = uploads.keep(ReportPhotoResource.target(reportId(id)), files)
                    .ids()
                    .size();
            return pages.go(here, kept == 1 ? "The photo was added" : kept + " photos were added");
        } catch (Refused refused) {
            return pages.goRefused(here, PhotoUploads.words(refused));
        }
    }

    private Response said(String id, AnswerForm typed, Runnable act, String done) {
        String here = "/desk/reports/" + reportId(id);
        try {
            act.run();
            return pages.go(here, done);
        } catch (Refused refused) {
            return refused.kind() == Refused.Kind.INVALID
                    ? page(400, id, FieldMessages.of(refused), typed)
                    : pages.goRefused(here, refused.getMessage());
        }
    }

    private Response page(int status, String id, FieldMessages wrong, AnswerForm typed) {
        return pages.show(status, Templates.report(views.of(reportId(id)), wrong, typed));
    }

    private static UUID reportId(String id) {
        return Identifier.of("return report", id);
    }
}
