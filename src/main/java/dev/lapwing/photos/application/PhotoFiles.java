package dev.lapwing.photos.application;

import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.platform.Refused;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The files of photos, two each, in folders by the first two digits of their hash. A file is there whole or not at all:
 * it is written beside, forced to the disk and renamed. It is written before its row, so what a crash leaves behind is a
 * file without a row, which the daily clean-up deletes.
 */
@ApplicationScoped
public class PhotoFiles {
    private static final String PICTURE = ".jpg";
    private static final String THUMBNAIL = "-small.jpg";
    /** The clean-up looks at nothing else, wherever the folder was set to. */
    private static final Pattern OWN_FOLDER = Pattern.compile("[0-9a-f]{2}");

    private static final Pattern OWN_FILE = Pattern.compile("[0-9a-f]{64}(-small)?\\.jpg|new-[0-9]+\\.part");

    @Inject
    PhotoSettings settings;

    @Inject
    Clock clock;

    /** Writes a picture and its thumbnail; those that are there already count as written now. */
    synchronized void write(String hash, byte[] picture, byte[] thumbnail) {
        write(file(hash, THUMBNAIL), thumbnail);
        write(file(hash, PICTURE), picture);
    }

    /** Returns the file of a picture, or refuses when it is missing on the disk. */
    public Path picture(String hash) {
        return required(file(hash, PICTURE));
    }

    /** Returns the file of a thumbnail, or refuses when it is missing on the disk. */
    public Path thumbnail(String hash) {
        return required(file(hash, THUMBNAIL));
    }

    private static Path required(Path file) {
        if (!Files.isReadable(file)) {
            throw Refused.notFound("picture of this photo on the disk: " + file.getFileName());
        }
        return file;
    }

    private Path file(String hash, String kind) {
        return settings.folder().resolve(hash.substring(0, 2)).resolve(hash + kind);
    }

    private void write(Path file, byte[] bytes) {
        try {
            if (Files.exists(file)) {
                Files.setLastModifiedTime(file, FileTime.from(clock.instant()));
                return;
            }
            Files.createDirectories(file.getParent());
            Path beside = Files.createTempFile(file.getParent(), "new-", ".part");
            try {
                writeForced(beside, bytes);
                Files.setLastModifiedTime(beside, FileTime.from(clock.instant()));
                Files.move(beside, file, StandardCopyOption.ATOMIC_MOVE);
            } finally {
                Files.deleteIfExists(beside);
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the photo " + file + " cannot be written", e);
        }
    }

    private static void writeForced(Path file, byte[] bytes) throws IOException {
        try (var channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
            var buffer = ByteBuffer.wrap(bytes);
            while (buffer.hasRemaining()) {
                channel.write(buffer);
            }
            channel.force(true);
        }
    }

    /**
     * Deletes the files that nothing needs and that were written before an instant.
     *
     * @param needed returns those of the hashes it is given that must stay
     * @return how many were deleted
     */
    int deleteUnneeded(Instant before, Function<Collection<String>, Set<String>> needed) {
        int deleted = 0;
        for (Path folder : children(settings.folder(), OWN_FOLDER)) {
            List<Path> files = children(folder, OWN_FILE);
            Set<String> stay = needed.apply(files.stream().map(PhotoFiles::hash).collect(Collectors.toSet()));
            for (Path file : files) {
                deleted += !stay.contains(hash(file)) && deleteIfOld(file, before) ? 1 : 0;
            }
        }
        return deleted;
    }

    private static String hash(Path file) {
        String name = file.getFileName().toString();
        return name.substring(0, Math.min(64, name.length()));
    }

    /** Looks at the age and deletes in one go: a file that is written anew at this moment must not be lost. */
    private synchronized boolean deleteIfOld(Path file, Instant before) {
        try {
            return Files.getLastModifiedTime(file).toInstant().isBefore(before) && Files.deleteIfExists(file);
        } catch (IOException e) {
            throw new UncheckedIOException("the photo " + file + " cannot be deleted", e);
        }
    }

    private static List<Path> children(Path folder, Pattern own) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(file -> own.matcher(file.getFileName().toString()).matches())
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("the folder " + folder + " cannot be read", e);
        }
    }
}
