package dev.lapwing.photos.application;

import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.photos.domain.BadPicture;
import dev.lapwing.photos.domain.Picture;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import jakarta.annotation.PostConstruct;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;

/** Makes prints of files that were sent, a few at a time so that memory stays bounded. */
@ApplicationScoped
class DevelopingPhotos {
    private static final int MEGA = 1_000_000;
    /** Cameras lost their clocks before this; what a picture says of earlier times is not its time. */
    private static final Instant CAMERAS_SINCE = Instant.parse("2000-01-02T00:00:00Z");

    private static final Duration CLOCK_AHEAD = Duration.ofDays(1);

    /**
     * A file made ready to be kept.
     *
     * @param print null when the file was sent before
     */
    record Developed(String sentHash, String hash, Darkroom.Print print, Instant takenAt) {}

    @Inject
    PhotoSettings settings;

    @Inject
    Clock clock;

    private Semaphore places;

    @PostConstruct
    void prepare() {
        places = new Semaphore(settings.decoders(), true);
    }

    /**
     * Develops all files, or refuses them together with each bad one named by its place, such as {@code photos[1]}.
     *
     * @param known whether a file of this hash was sent before and need not be developed again
     */
    List<Developed> develop(List<SentPhoto> files, ZoneId zone, Predicate<String> known) {
        List<Developed> developed = new ArrayList<>();
        List<FieldError> errors = new ArrayList<>();
        BadPicture first = null;
        for (int i = 0; i < files.size(); i++) {
            try {
                developed.add(inTurn(files.get(i).file(), zone, known));
            } catch (BadPicture bad) {
                first = first == null ? bad : first;
                errors.add(new FieldError("photos[" + i + "]", named(files.get(i)) + bad.getMessage()));
            }
        }
        if (first != null) {
            throw switch (first.why()) {
                case OTHER_TYPE -> Refused.unsupported(errors);
                case TOO_LARGE -> Refused.tooLarge(errors);
                case DAMAGED -> Refused.invalid(errors);
            };
        }
        return developed;
    }

    private static String named(SentPhoto file) {
        String name = file.name() == null ? "" : file.name().strip();
        return name.isEmpty() ? "" : name.substring(0, Math.min(100, name.length())) + " ";
    }

    private Developed inTurn(Path file, ZoneId zone, Predicate<String> known) {
        try {
            if (!places.tryAcquire(settings.longestWait().toMillis(), TimeUnit.MILLISECONDS)) {
                throw Refused.busy("Too many photos are being taken in at the moment; send it again in a minute");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("interrupted while a photo waited for its turn", e);
        }
        try {
            return develop(read(file), zone, known);
        } finally {
            places.release();
        }
    }

    private byte[] read(Path file) {
        try {
            if (Files.size(file) > (long) settings.fileMegabytes() * MEGA) {
                throw BadPicture.tooLarge("is larger than " + settings.fileMegabytes() + " MB");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new UncheckedIOException("an uploaded file cannot be read", e);
        }
    }

    private Developed develop(byte[] bytes, ZoneId zone, Predicate<String> known) {
        String sentHash = Secrets.hash(bytes);
        if (known.test(sentHash)) {
            return new Developed(sentHash, null, null, null);
        }
        Picture picture = Picture.examine(bytes, (long) settings.megapixels() * MEGA);
        Darkroom.Print print = Darkroom.develop(picture, settings.longestSide());
        return new Developed(sentHash, Secrets.hash(print.picture()), print, plausible(picture.takenAt(zone)));
    }

    private Instant plausible(Instant taken) {
        boolean fine = taken != null
                && taken.isAfter(CAMERAS_SINCE)
                && taken.isBefore(clock.instant().plus(CLOCK_AHEAD));
        return fine ? taken : null;
    }
}
