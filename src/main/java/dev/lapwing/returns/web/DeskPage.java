package dev.lapwing.returns.web;

import dev.lapwing.fleet.Unit;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.returns.MarkedNote;
import dev.lapwing.returns.RoofPlace;
import dev.lapwing.returns.application.FilingReturnReport;
import dev.lapwing.returns.application.ReturnNotice;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.Pages;
import dev.lapwing.web.Repeats;
import dev.lapwing.web.Roles;
import dev.lapwing.web.Shell;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.BeanParam;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestQuery;

/** The form for a unit that comes back, with the note read while it is typed. */
@Path("/desk")
@RolesAllowed({Roles.COORDINATOR, Roles.DESK})
class DeskPage {
    private static final int MOST_UNITS = 12;

    @CheckedTemplate(basePath = "returns")
    static class Templates {
        static native TemplateInstance desk(
                DeskForm form, FieldMessages wrong, List<RoofPlace> places, List<String> kinds, String said);

        static native TemplateInstance reading(ReadingAnswer reading, List<MarkedNote.Piece> pieces, boolean blank);

        static native TemplateInstance units(List<Unit> units, String typed);
    }

    @Inject
    FilingReturnReport filing;

    @Inject
    ContactReader reader;

    @Inject
    Repeats repeats;

    @Inject
    Secrets secrets;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    public Response empty(@RestQuery String unit) {
        var form = new DeskForm();
        form.unit = unit;
        return form(200, form, FieldMessages.NONE, null);
    }

    @POST
    public Response file(@BeanParam DeskForm form) {
        try {
            String id = QuarkusTransaction.requiringNew().call(() -> once(form));
            return pages.go("/desk/reports/" + id);
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID -> form(400, form, FieldMessages.of(refused), null);
                case KEY_REUSED ->
                    form(
                            409,
                            form,
                            FieldMessages.NONE,
                            "This form was sent before with other words, and"
                                    + " that report stands. Send again to file what is written here as a second report.");
                default -> throw refused;
            };
        }
    }

    private String once(DeskForm form) {
        if (form.key == null || form.key.isBlank() || form.key.length() > 200) {
            throw Refused.invalid("key", "is missing: open the form again");
        }
        Instant now = clock.instant();
        return repeats.once(shell.username(), form.key, form.fingerprint(), () -> {
                    var errors = new FieldErrors();
                    var notice = form.notice(now, errors);
                    if (!errors.list().isEmpty()) {
                        throw everythingWrong(notice, errors);
                    }
                    var report = filing.file(notice, shell.username());
                    return new Repeats.Kept(303, report.id.toString());
                })
                .body();
    }

    /** Names what could not be read of the form together with what could not be filed. */
    private Refused everythingWrong(ReturnNotice notice, FieldErrors errors) {
        try {
            filing.examine(notice);
        } catch (Refused alsoWrong) {
            alsoWrong.errors().forEach(error -> errors.check(false, error.field(), error.message()));
        }
        return Refused.invalid(errors.list());
    }

    /** Shows the form; each showing has a key of its own, unless the one it came with was not used up. */
    private Response form(int status, DeskForm form, FieldMessages wrong, String said) {
        form.key = status == 400 && form.key != null ? form.key : secrets.newToken();
        return pages.show(status, Templates.desk(form, wrong, List.of(RoofPlace.values()), MarkKinds.ALL, said));
    }

    /** Answers the reading of a note as a piece of the page. */
    @POST
    @Path("reading")
    @Transactional
    public Response reading(@RestForm String note, @RestForm String unit) {
        String text = note == null ? "" : note.substring(0, Math.min(note.length(), 20_000));
        Double height = unit == null
                ? null
                : Unit.byNumber(unit.strip())
                        .map(found -> found.heightMetres.doubleValue())
                        .orElse(null);
        var reading = reader.read(text, null, height);
        return pages.show(
                Templates.reading(ReadingAnswer.of(reading), MarkedNote.of(text, reading.evidence()), text.isBlank()));
    }

    /** Answers the units whose number contains what is typed, as a piece of the page. */
    @GET
    @Path("units")
    @Transactional
    public Response units(@RestQuery String unit) {
        String typed = unit == null ? "" : unit.strip();
        List<Unit> found = typed.isEmpty() ? List.of() : Unit.matching(typed, MOST_UNITS);
        return pages.show(Templates.units(found, typed));
    }
}
