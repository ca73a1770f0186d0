package dev.lapwing.jobs.web;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.MovingTasks;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.jobs.application.ReadingCautions;
import dev.lapwing.jobs.application.RecordingFindings;
import dev.lapwing.jobs.application.SigningOff;
import dev.lapwing.jobs.domain.sheet.SignOffEntry;
import dev.lapwing.jobs.storage.RecordedFinding;
import dev.lapwing.platform.Identifier;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestPath;

/** What is entered on a sheet, one form for each. */
@Path("/tasks/{id}/sheet")
@RolesAllowed({Roles.COORDINATOR, Roles.TECH})
class SheetEntryPage {
    @Inject
    SheetAnswers answers;

    @Inject
    ReadingCautions cautions;

    @Inject
    MovingTasks moving;

    @Inject
    RecordingFindings recording;

    @Inject
    SigningOff signing;

    @Inject
    SecurityIdentity identity;

    @Inject
    Shell shell;

    @POST
    @Path("cautions")
    public Response read(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return answers.once(task, "#facts", form, () -> {
            cautions.read(task, form.read == null ? List.of() : form.read, signer());
            return "Cautions read";
        });
    }

    @POST
    @Path("start")
    public Response start(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return answers.once(task, "#wash", form, () -> {
            form.refuseBadWeather();
            moving.begin(task, signer());
            return "Started";
        });
    }

    @POST
    @Path("findings")
    public Response find(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return answers.once(task, "#findings", form, () -> {
            RecordedFinding found = form.changes()
                    ? recording.change(task, form.findingId(), form.entry(), signer())
                    : recording.record(task, List.of(form.entry()), signer()).get(0);
            return "Noted: " + found.finding().inWords().replace('\n', ' ') + "\n" + found.id;
        });
    }

    @POST
    @Path("withdrawals")
    public Response takeBack(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return answers.once(task, "#findings", form, () -> {
            recording.takeBack(task, form.findingId(), signer());
            return "Taken back";
        });
    }

    @POST
    @Path("sign-off")
    public Response sign(@RestPath String id, @BeanParam SheetForm form) {
        UUID task = taskId(id);
        return answers.once(task, "", form, () -> {
            SignOffEntry entry = form.signature(cautions.readBy(CareTask.require(task), shell.username()));
            SigningOff.SignedOff signed = signing.signOff(task, entry, signer());
            String verdict = signed.sheet().verdict.word().replace('-', ' ');
            return "Signed off, verdict " + verdict + ". "
                    + (signed.released() ? "The unit is free." : "The unit stays on hold.");
        });
    }

    private Signer signer() {
        return new Signer(identity.getPrincipal().getName(), identity.getRoles(), shell.byLink());
    }

    private static UUID taskId(String id) {
        return Identifier.of("task", id);
    }
}
