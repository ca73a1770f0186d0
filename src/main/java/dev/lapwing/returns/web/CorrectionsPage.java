package dev.lapwing.returns.web;

import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.RestQuery;

/** Shows the coordinator where people and the reader disagreed. */
@Path("/corrections")
class CorrectionsPage {
    private static final int ROWS = 30;

    @CheckedTemplate(basePath = "returns")
    static class Templates {
        static native TemplateInstance corrections(Page<ReadingCorrectionResource.CorrectionAnswer> page);
    }

    @GET
    @Produces(MediaType.TEXT_HTML)
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public String show(@RestQuery String after) {
        return Templates.corrections(ReadingCorrectionResource.page(after, ROWS))
                .render();
    }
}
