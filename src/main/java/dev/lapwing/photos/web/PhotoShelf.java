package dev.lapwing.photos.web;

import dev.lapwing.photos.storage.Photo;
import dev.lapwing.web.PersonNames;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.UUID;

/** Hands pages the photos they show. */
@Named("photoShelf")
@ApplicationScoped
public class PhotoShelf {
    @Inject
    PersonNames names;

    /** Returns the photos of a report or task in the order they were added, those that were taken away included. */
    @Transactional
    public List<ShownPhoto> of(UUID sourceId) {
        return shown(Photo.of(sourceId));
    }

    /** Returns the newest photos of a unit, the newest first. */
    @Transactional
    public List<ShownPhoto> ofUnit(UUID unitId, int most) {
        return shown(Photo.ofUnit(unitId, most));
    }

    private List<ShownPhoto> shown(List<Photo> photos) {
        return photos.stream()
                .map(photo -> ShownPhoto.of(photo, names.of(photo.removedAt == null ? photo.addedBy : photo.removedBy)))
                .toList();
    }
}
