package dev.lapwing.photos.application;

import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.photos.storage.Photo;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.time.Clock;
import org.jboss.logging.Logger;

/** Deletes, once a day, the files of photos that were taken away and what an upload that was cut off left behind. */
@ApplicationScoped
class ClearingPhotoFiles {
    private static final Logger LOG = Logger.getLogger(ClearingPhotoFiles.class);

    @Inject
    PhotoFiles files;

    @Inject
    PhotoSettings settings;

    @Inject
    Clock clock;

    @Scheduled(identity = "photo-files", every = "24h", delayed = "10m")
    void daily() {
        int deleted = clear();
        if (deleted > 0) {
            LOG.infof("Deleted %d photo files that nothing needs", deleted);
        }
    }

    /** Deletes what nothing needs and returns how many files that were. */
    int clear() {
        return files.deleteUnneeded(
                clock.instant().minus(settings.orphanAge()),
                hashes -> QuarkusTransaction.requiringNew().call(() -> Photo.stillThere(hashes)));
    }
}
