package dev.lapwing.photos.web;

import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.photos.storage.Photo;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;

/** Hands pages the photos they show. */
@Named("photoShelf")
@ApplicationScoped
public class PhotoShelf {
    @Inject
    PersonNames names;

    @Inject
    PhotoSettings settings;

    /** Returns the most megabytes that a file may have. */
    public int mostMegabytes() {
        return settings.fileMegabytes();
    }

    /** Returns the photos of a report or task in the order they were added, those that were taken away included. */
    @Transactional
    public List<ShownPhoto> of(UUID sourceId) {
        return shown(Photo.of(sourceId), PhotoAddresses::of);
    }

    /** Returns the photos of the sheet of a task, with addresses for whoever may open the sheet. */
    @Transactional
    public List<ShownPhoto> ofSheet(UUID taskId) {
        return shown(Photo.of(taskId), PhotoAddresses::onSheet);
    }

    /** Returns the newest photos of a unit, the newest first. */
    @Transactional
    public List<ShownPhoto> ofUnit(UUID unitId, int most) {
        return shown(Photo.ofUnit(unitId, most), PhotoAddresses::of);
    }

    private List<ShownPhoto> shown(List<Photo> photos, Function<Photo, PhotoAddresses> addresses) {
        return photos.stream()
                .map(photo -> ShownPhoto.of(
                        photo,
                        addresses.apply(photo),
                        names.of(photo.removedAt == null ? photo.addedBy : photo.removedBy)))
                .toList();
    }
}
