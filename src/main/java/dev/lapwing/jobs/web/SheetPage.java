package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.RecordingFindings;
import dev.lapwing.jobs.application.SigningOff;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Repeats;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import java.util.function.Supplier;
import org.jboss.resteasy.reactive.RestPath;

/** The sheet that a tech works from and signs, in the order of the work. Works without scripts. */
@Path("/tasks/{id}/sheet")
class SheetPage {
    @CheckedTemplate(basePath = "jobs")
    static class Templates {
        static native TemplateInstance sheet(SheetView view, SheetForm form, SheetChoices choices, List<String> wrong);
    }

    @Inject
    SheetViews views;

    @Inject
    RecordingFindings recording;

    @Inject
    SigningOff signing;

    @Inject
    Repeats repeats;

    @Inject
    Secrets secrets;

    @Inject
    SecurityIdentity identity;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    public Response show(@RestPath String id) {
        var form = new SheetForm();
        form.by = shell.fullName();
        return page(200, taskId(id), form, List.of());
    }

    @POST
    @Path("findings")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response find(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return send(task, form, here(task) + "#findings", () -> {
            recording.record(task, List.of(form.finding()), signer());
            return "Noted: " + form.kind + " in " + form.zone;
        });
    }

    @POST
    @Path("sign-off")
    @RolesAllowed({Roles.COORDINATOR, Roles.TECH})
    public Response sign(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return send(task, form, here(task), () -> {
            var entry = form.signature(views.cautions(CareTask.require(task)));
            SigningOff.SignedOff signed = signing.signOff(task, entry, signer());
            String verdict = signed.sheet().verdict.word().replace('-', ' ');
            return "Signed off, verdict " + verdict + ". "
                    + (signed.released() ? "The unit is free." : "The unit stays on hold.");
        });
    }

    /** Does what a form asks for once, however often it is sent, and goes on; a wrong form is shown again. */
    private Response send(UUID task, SheetForm form, String then, Supplier<String> act) {
        try {
            String key =
                    form.key == null || form.key.isBlank() || form.key.length() > 100 ? secrets.newToken() : form.key;
            String said = QuarkusTransaction.requiringNew()
                    .call(() -> repeats.once(
                                    shell.username(),
                                    key,
                                    form.fingerprint(task.toString()),
                                    () -> new Repeats.Kept(303, act.get()))
                            .body());
            return pages.go(then, said);
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID -> page(400, task, form, messages(refused));
                case CONFLICT, KEY_REUSED -> page(409, task, form, List.of(refused.getMessage()));
                default -> throw refused;
            };
        }
    }

    private static List<String> messages(Refused refused) {
        return refused.errors().stream()
                .map(error -> SheetChoices.label(error.field().replace("[0].", "")) + " " + error.message())
                .toList();
    }

    private Response page(int status, UUID task, SheetForm form, List<String> wrong) {
        form.key = secrets.newToken();
        SheetView view = QuarkusTransaction.requiringNew().call(() -> views.of(CareTask.require(task), shell));
        return pages.show(status, Templates.sheet(view, form, SheetChoices.ALL, wrong));
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles());
    }

    private static String here(UUID task) {
        return "/tasks/" + task + "/sheet";
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
