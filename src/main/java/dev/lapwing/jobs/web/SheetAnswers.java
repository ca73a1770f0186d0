package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Repeats;
import dev.lapwing.web.Shell;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.function.Supplier;

/** Answers what is entered on a sheet: with a page to people, with the new state to the script of the page. */
@ApplicationScoped
class SheetAnswers {
    @CheckedTemplate(basePath = "jobs")
    static class Templates {
        static native TemplateInstance sheet(
                SheetView view, SheetForm form, SheetChoices choices, List<String> wrong, String said);
    }

    /** What the script is answered: what was done, the finding that came of it if any, and the sheet as it is now. */
    record Entered(String said, String finding, SheetState state) {}

    @Inject
    SheetViews views;

    @Inject
    SheetStates states;

    @Inject
    Repeats repeats;

    @Inject
    Secrets secrets;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    RoutingContext request;

    /**
     * Does what a form asks for once, however often it is sent.
     *
     * @param act returns what was done in words, and after a line break the id of a new finding if there is one
     */
    Response once(UUID task, String anchor, SheetForm form, Supplier<String> act) {
        String fingerprint = form.fingerprint(request.normalizedPath());
        if (forScript()) {
            return toScript(task, fingerprint, act);
        }
        try {
            String said =
                    done(SheetForm.usable(form.key, secrets), fingerprint, act).split("\n")[0];
            // after a signature the link of the mail opens nothing any more, so the answer is the page itself
            return shell.byLink()
                    ? page(200, task, emptied(), List.of(), said)
                    : pages.go(SheetAnswers.here(task) + anchor, said);
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID -> page(400, task, form, messages(refused), null);
                case CONFLICT, KEY_REUSED -> page(409, task, form, List.of(refused.getMessage()), null);
                default -> throw refused;
            };
        }
    }

    /**
     * Does once what the script of the page sends, and answers the sheet as it is then; what is refused goes on as a
     * refusal.
     *
     * @param fingerprint tells what is sent from something else under the same key
     */
    Response toScript(UUID task, String fingerprint, Supplier<String> act) {
        String key = SheetForm.usable(request.request().getHeader("Idempotency-Key"), secrets);
        return Response.ok(entered(task, done(key, fingerprint, act)), MediaType.APPLICATION_JSON_TYPE)
                .build();
    }

    private String done(String key, String fingerprint, Supplier<String> act) {
        return inTransaction(() -> repeats.once(
                        shell.username(), key, fingerprint, () -> new Repeats.Kept(200, act.get()))
                .body());
    }

    private Entered entered(UUID task, String done) {
        String[] parts = done.split("\n");
        SheetState state = inTransaction(() -> states.of(CareTask.require(task), shell));
        return new Entered(parts[0], parts.length > 1 ? parts[1] : null, state);
    }

    /** Returns whether the script of the page asks, and not the browser itself. */
    boolean forScript() {
        String accept = request.request().getHeader("Accept");
        return accept != null && accept.contains(MediaType.APPLICATION_JSON);
    }

    private SheetForm emptied() {
        var form = new SheetForm();
        form.by = shell.fullName();
        return form;
    }

    private static List<String> messages(Refused refused) {
        return refused.errors().stream()
                .map(error -> SheetChoices.label(error.field().replace("[0].", "")) + " " + error.message())
                .toList();
    }

    Response page(int status, UUID task, SheetForm form) {
        return page(status, task, form, List.of(), null);
    }

    private Response page(int status, UUID task, SheetForm form, List<String> wrong, String said) {
        form.key = secrets.newToken();
        SheetView view = inTransaction(() -> views.of(CareTask.require(task), shell));
        return pages.show(status, Templates.sheet(view, form, SheetChoices.ALL, wrong, said));
    }

    <T> T inTransaction(Callable<T> act) {
        return QuarkusTransaction.requiringNew().call(act);
    }

    private static String here(UUID task) {
        return "/tasks/" + task + "/sheet";
    }
}
