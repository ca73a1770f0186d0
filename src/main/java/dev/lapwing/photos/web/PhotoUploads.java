package dev.lapwing.photos.web;

import dev.lapwing.photos.application.KeepingPhotos;
import dev.lapwing.photos.application.SentPhoto;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Page;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jboss.resteasy.reactive.multipart.FileUpload;

/** Takes the files of a form in and answers the photos they became. */
@ApplicationScoped
public class PhotoUploads {
    @Inject
    KeepingPhotos keeping;

    @Inject
    SecurityIdentity identity;

    @Inject
    RoutingContext request;

    /** Keeps the files and answers the photos: 201, or 200 when all of them were there before. */
    public Response answer(KeepingPhotos.Target target, List<FileUpload> files) {
        return answer(target, files, PhotoAddresses::of);
    }

    /** Keeps the files and answers the photos with the addresses that the sender may use. */
    public Response answer(
            KeepingPhotos.Target target, List<FileUpload> files, Function<Photo, PhotoAddresses> addresses) {
        KeepingPhotos.Kept kept = keep(target, files);
        List<PhotoAnswer> photos = QuarkusTransaction.requiringNew()
                .call(() -> kept.ids().stream()
                        .map(Photo::require)
                        .map(photo -> PhotoAnswer.of(photo, addresses.apply(photo)))
                        .toList());
        return Response.status(kept.added() ? 201 : 200)
                .entity(new Page<>(photos, photos.size(), null))
                .build();
    }

    /** Returns in one sentence for a page what was refused. */
    public static String words(Refused refused) {
        return refused.errors().isEmpty()
                ? refused.getMessage()
                : "Nothing was stored: "
                        + refused.errors().stream().map(FieldError::message).collect(Collectors.joining("; "));
    }

    /** Keeps the files; a file field of a page that was left empty is no file. */
    public KeepingPhotos.Kept keep(KeepingPhotos.Target target, List<FileUpload> files) {
        List<SentPhoto> sent = files == null
                ? List.of()
                : files.stream()
                        .filter(file -> file.size() > 0
                                || file.fileName() != null && !file.fileName().isEmpty())
                        .map(file -> new SentPhoto(file.fileName(), file.uploadedFile()))
                        .toList();
        return keeping.keep(
                target,
                sent,
                identity.getPrincipal().getName(),
                request.request().getHeader("Idempotency-Key"));
    }
}
