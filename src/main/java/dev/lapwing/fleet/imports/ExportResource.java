package dev.lapwing.fleet.imports;

import dev.lapwing.web.Roles;
import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Response;
import java.io.IOException;
import java.io.OutputStream;
import org.jboss.resteasy.reactive.RestPath;

/** Gives a whole table as a file that can be imported again. */
@Path("/api/exports")
class ExportResource {
    @Inject
    Tables tables;

    @GET
    @Path("/{table}.csv")
    @RolesAllowed(Roles.COORDINATOR)
    @Produces("text/csv")
    public Response export(@RestPath String table) {
        CsvTable wanted = tables.require(table);
        return CsvAnswers.file(table + ".csv", out -> write(wanted, out));
    }

    private static void write(CsvTable table, OutputStream out) throws IOException {
        var writer = new CsvWriter(out, ',');
        writer.write(table.columns().stream().map(CsvTable.Column::name).toList());
        String cursor = null;
        do {
            String from = cursor;
            CsvTable.ExportPage page = QuarkusTransaction.requiringNew().call(() -> table.page(from));
            for (var row : page.rows()) {
                writer.write(row);
            }
            writer.flush();
            cursor = page.next();
        } while (cursor != null);
    }
}
