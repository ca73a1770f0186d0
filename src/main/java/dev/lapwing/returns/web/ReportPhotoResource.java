package dev.lapwing.returns.web;

import dev.lapwing.photos.PhotoSource;
import dev.lapwing.photos.application.KeepingPhotos;
import dev.lapwing.photos.application.PhotoPlace;
import dev.lapwing.photos.web.PhotoAnswer;
import dev.lapwing.photos.web.PhotoUploads;
import dev.lapwing.platform.Identifier;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.narayana.jta.QuarkusTransaction;
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

/** Photos of a unit that came back. */
@Path("/api/return-reports/{id}/photos")
class ReportPhotoResource {
    @Inject
    PhotoUploads uploads;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<PhotoAnswer> list(@RestPath String id) {
        return PhotoAnswer.pageOf(ReturnReport.require(Identifier.of("return report", id)).id);
    }

    @POST
    @Consumes(MediaType.MULTIPART_FORM_DATA)
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    public Response add(@RestPath String id, @RestForm(FileUpload.ALL) List<FileUpload> files) {
        return uploads.answer(target(Identifier.of("return report", id)), files);
    }

    /** Returns the report as what photos are added to. */
    static KeepingPhotos.Target target(UUID reportId) {
        ReturnReport report = QuarkusTransaction.requiringNew().call(() -> ReturnReport.require(reportId));
        return new KeepingPhotos.Target(PhotoSource.REPORT, report.id, report.unit, PhotoPlace.NOT_SAID);
    }
}
