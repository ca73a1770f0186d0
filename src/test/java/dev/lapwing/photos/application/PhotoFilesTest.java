package dev.lapwing.photos.application;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.photos.PhotoSettings;
import dev.lapwing.platform.Refused;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files are there whole or not at all, and only what nothing needs is deleted. */
class PhotoFilesTest {
    private static final Instant NOW = Instant.parse("2026-11-25T12:00:00Z");
    private static final String NEEDED = "ab" + "0".repeat(62);
    private static final String ORPHAN = "ab" + "1".repeat(62);

    /** The default settings with another folder. */
    private record FolderOnly(Path folder) implements PhotoSettings {
        @Override
        public int fileMegabytes() {
            return 15;
        }

        @Override
        public int megapixels() {
            return 50;
        }

        @Override
        public int longestSide() {
            return 3200;
        }

        @Override
        public int decoders() {
            return 2;
        }

        @Override
        public Duration longestWait() {
            return Duration.ofSeconds(30);
        }

        @Override
        public int unitMegabytes() {
            return 300;
        }

        @Override
        public int fleetMegabytes() {
            return 50_000;
        }

        @Override
        public Duration orphanAge() {
            return Duration.ofHours(24);
        }
    }

    @TempDir
    Path folder;

    private PhotoFiles files;

    @BeforeEach
    void files() {
        files = filesAt(NOW);
    }

    private PhotoFiles filesAt(Instant now) {
        var made = new PhotoFiles();
        made.settings = new FolderOnly(folder);
        made.clock = Clock.fixed(now, ZoneOffset.UTC);
        return made;
    }

    @Test
    void aPictureIsReadAsItWasWrittenAndNothingElseIsLeftInTheFolder() throws IOException {
        files.write(NEEDED, new byte[] {1, 2, 3}, new byte[] {4});

        assertThat(files.picture(NEEDED)).hasBinaryContent(new byte[] {1, 2, 3});
        assertThat(files.thumbnail(NEEDED)).hasBinaryContent(new byte[] {4});
        assertThat(names()).containsExactlyInAnyOrder(NEEDED + ".jpg", NEEDED + "-small.jpg");
    }

    @Test
    void aFileThatIsMissingIsSaidToBe() {
        assertThatThrownBy(() -> files.picture(NEEDED))
                .isInstanceOf(Refused.class)
                .hasMessageContaining("on the disk");
    }

    @Test
    void oldFilesThatNothingNeedsAreDeleted() throws IOException {
        files.write(NEEDED, new byte[1], new byte[1]);
        files.write(ORPHAN, new byte[1], new byte[1]);
        Path cutOff = Files.createFile(folder.resolve("ab").resolve("new-17.part"));
        Files.setLastModifiedTime(cutOff, FileTime.from(NOW));

        assertThat(files.deleteUnneeded(NOW, hashes -> Set.of(NEEDED))).isZero();
        assertThat(files.deleteUnneeded(NOW.plusSeconds(1), hashes -> Set.of(NEEDED)))
                .isEqualTo(3);
        assertThat(names()).containsExactlyInAnyOrder(NEEDED + ".jpg", NEEDED + "-small.jpg");
    }

    @Test
    void aFileThatIsWrittenAgainCountsAsNew() {
        files.write(ORPHAN, new byte[1], new byte[1]);
        filesAt(NOW.plus(Duration.ofHours(2))).write(ORPHAN, new byte[1], new byte[1]);

        assertThat(files.deleteUnneeded(NOW.plus(Duration.ofHours(1)), hashes -> Set.of()))
                .isZero();
    }

    @Test
    void whatTheServiceDidNotWriteIsNeverDeleted() throws IOException {
        Path mail = Files.createDirectories(folder.resolve("mail")).resolve("1.eml");
        Path other = Files.createDirectories(folder.resolve("ab")).resolve("notes.txt");
        Files.createFile(mail);
        Files.createFile(other);

        assertThat(files.deleteUnneeded(Instant.now().plusSeconds(60), hashes -> Set.of()))
                .isZero();
        assertThat(mail).exists();
        assertThat(other).exists();
    }

    private Set<String> names() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return Set.copyOf(all.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .toList());
        }
    }
}
