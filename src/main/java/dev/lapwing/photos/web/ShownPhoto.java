package dev.lapwing.photos.web;

import dev.lapwing.photos.storage.Photo;
import dev.lapwing.web.Dates;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.UUID;

/**
 * A photo as pages show it.
 *
 * @param at where its pictures are found
 * @param what what it shows, for those who do not see it
 * @param day the day it was taken, or added when the camera did not say
 * @param when that time in words
 */
public record ShownPhoto(
        UUID id,
        PhotoAddresses at,
        String source,
        UUID sourceId,
        String what,
        LocalDate day,
        String when,
        String who,
        boolean removed,
        String why) {

    /** Returns a photo as pages show it. */
    static ShownPhoto of(Photo photo, PhotoAddresses addresses, String who) {
        ZoneId zone = photo.unit.depot.zoneId();
        var time = photo.takenAt == null ? photo.addedAt : photo.takenAt;
        return new ShownPhoto(
                photo.id,
                addresses,
                photo.source.word(),
                photo.sourceId,
                what(photo),
                time.atZone(zone).toLocalDate(),
                (photo.takenAt == null ? "added " : "taken ") + Dates.time(time, zone),
                who,
                photo.removedAt != null,
                photo.removedWhy);
    }

    private static String what(Photo photo) {
        String where = photo.zone == null ? "roof of " + photo.unit.number : photo.zone;
        return photo.finding == null ? where : "finding " + (photo.finding + 1) + ", " + where;
    }
}
