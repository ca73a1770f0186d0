package dev.lapwing.photos.application;

import dev.lapwing.photos.storage.Photo;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;

/** Takes a photo away for a reason. It is shown to nobody from then on; that it was there stays on record. */
@ApplicationScoped
public class TakingPhotosAway {
    private static final int LONGEST_WHY = 500;

    @Inject
    Clock clock;

    /** Takes a photo away; refuses without a reason, and when somebody did so before. */
    @Transactional
    public Photo takeAway(UUID id, String why, String by) {
        var errors = new FieldErrors();
        if (errors.present(why, "why")) {
            errors.atMost(why, LONGEST_WHY, "why");
        }
        errors.refuseIfAny();
        Photo photo = Photo.require(id);
        if (photo.removedAt != null) {
            throw Refused.conflict("The photo was taken away before");
        }
        photo.removedAt = clock.instant();
        photo.removedBy = by;
        photo.removedWhy = why.strip();
        return photo;
    }
}
