package dev.lapwing.photos.web;

import dev.lapwing.photos.application.PhotoFiles;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.EntityTag;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import java.nio.file.Path;
import java.util.function.Function;

/** Hands pictures to browsers. The picture of a photo never changes, so it may be kept for good. */
@ApplicationScoped
public class PhotoDelivery {
    private static final String FOR_GOOD = "private, max-age=31536000, immutable";

    @Inject
    PhotoFiles files;

    /** Answers the picture, or refuses when the photo was taken away. */
    public Response picture(Photo photo, Request request) {
        return answer(photo, "", files::picture, request);
    }

    /** Answers the small picture, or refuses when the photo was taken away. */
    public Response thumbnail(Photo photo, Request request) {
        return answer(photo, "-small", files::thumbnail, request);
    }

    private static Response answer(Photo photo, String kind, Function<String, Path> files, Request request) {
        if (photo.removedAt != null) {
            throw Refused.notFound("picture any more: the photo was taken away");
        }
        var tag = new EntityTag(photo.hash + kind);
        Response.ResponseBuilder unchanged = request.evaluatePreconditions(tag);
        Response.ResponseBuilder answer = unchanged != null
                ? unchanged
                : Response.ok(files.apply(photo.hash).toFile(), "image/jpeg")
                        .header(HttpHeaders.CONTENT_DISPOSITION, "inline; filename=\"" + photo.id + kind + ".jpg\"");
        return answer.tag(tag)
                .header(HttpHeaders.CACHE_CONTROL, FOR_GOOD)
                .header("Content-Security-Policy", "default-src 'none'; sandbox")
                .build();
    }
}
