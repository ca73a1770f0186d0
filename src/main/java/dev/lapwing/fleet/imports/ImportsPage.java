package dev.lapwing.fleet.imports;

import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Identifier;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Dates;
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
import java.io.IOException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Files of units and rentals: send one, say what its columns mean, see how far it is and what did not go in. */
@Path("/imports")
@RolesAllowed(Roles.COORDINATOR)
class ImportsPage {
    private static final int RUNS = 20;
    private static final int REJECTED = 50;
    private static final int SAMPLES = 3;

    record Row(
            UUID id, String asked, String table, String by, ImportState state, int rows, int accepted, int rejected) {}

    /** A column of the file: what it holds, and the column of the table it stands for. */
    record Heading(int place, String name, String samples, String column) {}

    record Run(
            UUID id,
            String table,
            String state,
            String asked,
            String by,
            int percent,
            int rows,
            int accepted,
            int rejected,
            List<String> ignored,
            String problem) {
        public boolean running() {
            return state.equals(ImportState.RUNNING.word());
        }
    }

    record Bad(int line, String reasons) {}

    @CheckedTemplate(basePath = "fleet")
    static class Templates {
        static native TemplateInstance imports(List<Row> rows, List<String> tables, String wrong);

        static native TemplateInstance importColumns(
                UUID draft,
                String table,
                List<Heading> headings,
                List<CsvTable.Column> columns,
                List<String> missing,
                List<FieldError> wrong);

        static native TemplateInstance importRun(Run run, List<Bad> bad);
    }

    @Inject
    Tables tables;

    @Inject
    Drafts drafts;

    @Inject
    TakingFiles taking;

    @Inject
    ImportWorker worker;

    @Inject
    Shell shell;

    @Inject
    Pages pages;

    @Inject
    Clock clock;

    @GET
    @Transactional
    public Response list() {
        return list(200, null);
    }

    private Response list(int status, String wrong) {
        List<Row> rows = ImportRun.latest(RUNS).stream().map(ImportsPage::row).toList();
        List<String> names = tables.all().stream().map(CsvTable::name).sorted().toList();
        return pages.show(status, Templates.imports(rows, names, wrong));
    }

    private static Row row(ImportRun run) {
        return new Row(
                run.id,
                Dates.time(run.askedAt, ZoneOffset.UTC),
                run.kind,
                run.askedBy,
                run.state,
                run.rowCount,
                run.accepted,
                run.rejected);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @Transactional
    public Response send(@RestForm String table, @RestForm FileUpload file) throws IOException {
        if (file == null || file.size() == 0) {
            return list(400, "choose a file first");
        }
        try {
            return pages.go("/imports/drafts/" + drafts.keep(table, file.uploadedFile()));
        } catch (Refused refused) {
            if (refused.kind() != Refused.Kind.INVALID) {
                throw refused;
            }
            return list(400, "the file " + refused.errors().get(0).message());
        }
    }

    @GET
    @Path("drafts/{id}")
    public Response columns(@RestPath String id) throws IOException {
        Drafts.Draft draft = drafts.require(Identifier.of("file", id));
        return columns(200, draft, new Headings(draft.table()).guess(draft.headings()), List.of());
    }

    private Response columns(int status, Drafts.Draft draft, List<String> columns, List<FieldError> wrong) {
        List<Heading> headings = new ArrayList<>();
        for (int i = 0; i < draft.headings().size(); i++) {
            String column = i < columns.size() ? columns.get(i) : Headings.LEFT_OUT;
            headings.add(new Heading(i, draft.headings().get(i), samples(draft, i), column));
        }
        return pages.show(
                status,
                Templates.importColumns(
                        draft.id(),
                        draft.table().name(),
                        headings,
                        draft.table().columns(),
                        new Headings(draft.table()).missing(columns),
                        wrong));
    }

    private static String samples(Drafts.Draft draft, int place) {
        List<String> cells = draft.rows().stream()
                .map(row -> place < row.size() ? row.get(place).strip() : "")
                .filter(cell -> !cell.isEmpty())
                .distinct()
                .limit(SAMPLES)
                .toList();
        return cells.isEmpty() ? "empty in the first rows" : String.join(" · ", cells);
    }

    /** @param column for each column of the file in order the column of the table, or empty to leave it out */
    @POST
    @Path("drafts/{id}")
    public Response begin(@RestPath String id, @RestForm List<String> column) throws IOException {
        Drafts.Draft draft = drafts.require(Identifier.of("file", id));
        List<String> columns = column == null ? List.of() : column;
        try {
            List<String> header = Headings.renamed(draft.headings(), columns);
            UUID run = taking.take(draft.table(), draft.file(), header, shell.username(), "draft " + draft.id());
            return pages.go("/imports/" + run);
        } catch (Refused refused) {
            if (refused.kind() != Refused.Kind.INVALID) {
                throw refused;
            }
            return columns(400, draft, columns, refused.errors());
        }
    }

    @GET
    @Path("{id}")
    @Transactional
    public Response one(@RestPath String id) {
        ImportRun run = ImportRun.require(Identifier.of("import", id));
        run.endIfCutOff(worker.id(), clock.instant());
        List<Bad> bad = Rejection.after(run.id, 0, REJECTED).stream()
                .map(ImportsPage::bad)
                .toList();
        return pages.show(Templates.importRun(shown(run), bad));
    }

    private static Run shown(ImportRun run) {
        return new Run(
                run.id,
                run.kind,
                run.state.word(),
                Dates.time(run.askedAt, ZoneOffset.UTC),
                run.askedBy,
                run.fileBytes == 0 ? 100 : (int) (100 * run.readBytes / run.fileBytes),
                run.rowCount,
                run.accepted,
                run.rejected,
                run.ignoredColumns,
                run.problem);
    }

    private static Bad bad(Rejection rejection) {
        List<String> reasons = rejection.errors.stream()
                .map(error ->
                        error.field() + " " + error.message() + Objects.requireNonNullElse(quoted(error.value()), ""))
                .toList();
        return new Bad(rejection.line, String.join("; ", reasons));
    }

    private static String quoted(String value) {
        return value == null ? null : ": “" + value + "”";
    }
}
