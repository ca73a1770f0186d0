package dev.lapwing.photos.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.photos.PhotoSource;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.web.Page;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/**
 * A photo as it is answered; times are those of the depot.
 *
 * @param address of the picture, null when it was taken away
 * @param thumbnail address of a small one, null when it was taken away
 * @param sha256 of the picture as it is kept
 * @param takenAt by the camera's clock, or null when it did not say
 * @param removed who took it away and why, or null
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record PhotoAnswer(
        UUID id,
        String address,
        String thumbnail,
        int width,
        int height,
        long bytes,
        String sha256,
        OffsetDateTime takenAt,
        OffsetDateTime addedAt,
        String addedBy,
        PhotoSource source,
        UUID sourceId,
        String zone,
        Integer finding,
        Removed removed) {

    /** That a photo was taken away. */
    public record Removed(OffsetDateTime at, String by, String why) {}

    /** Returns a photo as it is answered; its unit and depot are read. */
    public static PhotoAnswer of(Photo photo) {
        return of(photo, PhotoAddresses.of(photo));
    }

    /** Returns a photo as it is answered, with the addresses that its reader may use. */
    public static PhotoAnswer of(Photo photo, PhotoAddresses addresses) {
        ZoneId zone = photo.unit.depot.zoneId();
        boolean there = photo.removedAt == null;
        return new PhotoAnswer(
                photo.id,
                there ? addresses.picture() : null,
                there ? addresses.thumbnail() : null,
                photo.width,
                photo.height,
                photo.bytes,
                photo.hash,
                at(photo.takenAt, zone),
                at(photo.addedAt, zone),
                photo.addedBy,
                photo.source,
                photo.sourceId,
                photo.zone,
                photo.finding,
                there ? null : new Removed(at(photo.removedAt, zone), photo.removedBy, photo.removedWhy));
    }

    /** Returns all photos of a report or task. */
    public static List<PhotoAnswer> listOf(UUID sourceId) {
        return Photo.of(sourceId).stream().map(PhotoAnswer::of).toList();
    }

    /** Returns all photos of a report or task as a list of the API is answered. */
    public static Page<PhotoAnswer> pageOf(UUID sourceId) {
        List<PhotoAnswer> all = listOf(sourceId);
        return new Page<>(all, all.size(), null);
    }

    private static OffsetDateTime at(Instant instant, ZoneId zone) {
        return instant == null ? null : instant.atZone(zone).toOffsetDateTime();
    }
}
