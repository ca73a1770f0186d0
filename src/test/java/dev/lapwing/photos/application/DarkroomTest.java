package dev.lapwing.photos.application;

import static dev.lapwing.photos.TestPictures.decoded;
import static dev.lapwing.photos.TestPictures.exif;
import static dev.lapwing.photos.TestPictures.fields;
import static dev.lapwing.photos.TestPictures.joined;
import static dev.lapwing.photos.TestPictures.part;
import static dev.lapwing.photos.TestPictures.text;
import static dev.lapwing.photos.TestPictures.withChunk;
import static dev.lapwing.photos.TestPictures.withSegment;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.Directory;
import com.drew.metadata.exif.ExifDirectoryBase;
import com.drew.metadata.exif.GpsDirectory;
import dev.lapwing.photos.TestPictures;
import dev.lapwing.photos.domain.BadPicture;
import dev.lapwing.photos.domain.Picture;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** What is kept of a picture: how it looks, when it was taken, and nothing else. */
class DarkroomTest {
    private static final long MOST = 50_000_000;
    private static final ZoneId ZONE = ZoneId.of("America/New_York");

    private static Darkroom.Print print(byte[] file) {
        return Darkroom.develop(Picture.examine(file, MOST), 3200);
    }

    static Stream<Arguments> goodPictures() {
        return Stream.of(
                Arguments.of("JPEG", TestPictures.jpeg()),
                Arguments.of("PNG", TestPictures.png()),
                Arguments.of("lossy WebP", TestPictures.lossyWebp()),
                Arguments.of("lossless WebP", TestPictures.losslessWebp()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("goodPictures")
    void everyFormatBecomesAJpegThatLooksTheSame(String name, byte[] file) {
        Darkroom.Print print = print(file);

        assertThat(print.picture()).startsWith(0xff, 0xd8, 0xff);
        assertThat(print.width()).isEqualTo(320);
        assertThat(print.height()).isEqualTo(200);
        assertThat(fields(decoded(print.picture()))).isEqualTo("0123");
        assertThat(fields(decoded(print.thumbnail()))).isEqualTo("0123");
    }

    /** The eight ways of Exif 2.32, tag 0x0112, worked out by hand: which field comes to lie where. */
    @ParameterizedTest
    @CsvSource({
        "1, 0123, 320", "2, 1032, 320", "3, 3210, 320", "4, 2301, 320",
        "5, 0213, 200", "6, 2031, 200", "7, 3120, 200", "8, 1302, 200"
    })
    void aPictureIsTurnedUpright(int orientation, String fields, int width) {
        byte[] file = withSegment(TestPictures.jpeg(), 0xe1, exif(orientation, "2026:03:01 10:20:30", "-05:00"));

        Darkroom.Print print = print(file);

        assertThat(fields(decoded(print.picture()))).isEqualTo(fields);
        assertThat(print.width()).isEqualTo(width);
    }

    @Test
    void theTimeTakenIsReadWithItsOffsetOrAsOfTheDepot() {
        byte[] withOffset = withSegment(TestPictures.jpeg(), 0xe1, exif(1, "2026:03:01 10:20:30", "+02:00"));
        byte[] without = withSegment(TestPictures.jpeg(), 0xe1, exif(1, "2026:03:01 10:20:30", "      "));

        assertThat(Picture.examine(withOffset, MOST).takenAt(ZONE)).isEqualTo(Instant.parse("2026-03-01T08:20:30Z"));
        assertThat(Picture.examine(without, MOST).takenAt(ZONE)).isEqualTo(Instant.parse("2026-03-01T15:20:30Z"));
        assertThat(Picture.examine(TestPictures.jpeg(), MOST).takenAt(ZONE)).isNull();
    }

    /** Read by the metadata-extractor library, which knows nothing of this service. */
    @ParameterizedTest
    @MethodSource("filesWithNotes")
    void nothingIsLeftOfWhatACameraNotes(byte[] file) throws IOException, ImageProcessingException {
        assertThat(directories(file)).anyMatch(directory -> directory instanceof ExifDirectoryBase);

        Darkroom.Print print = print(file);

        for (byte[] kept : List.of(print.picture(), print.thumbnail())) {
            assertThat(directories(kept))
                    .noneMatch(directory -> directory instanceof ExifDirectoryBase)
                    .extracting(Directory::getName)
                    .doesNotContain("XMP", "GPS", "ICC Profile", "IPTC", "JpegComment", "Photoshop");
            assertThat(new String(kept, StandardCharsets.ISO_8859_1))
                    .doesNotContain("Secret")
                    .doesNotContain("Exif")
                    .doesNotContain("script");
        }
    }

    static Stream<byte[]> filesWithNotes() {
        byte[] notes = exif(1, "2026:03:01 10:20:30", "-05:00");
        byte[] jpeg = withSegment(TestPictures.jpeg(), 0xfe, text("<script>Secret</script>"));
        jpeg = withSegment(jpeg, 0xe1, text("http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>Secret</x:xmpmeta>"));
        byte[] png = withChunk(TestPictures.png(), TestPictures.chunk("tEXt", text("Comment\0Secret script")));
        return Stream.of(
                withSegment(jpeg, 0xe1, notes),
                withChunk(png, TestPictures.chunk("eXIf", part(notes, 6, notes.length))));
    }

    @Test
    void theNotesOfTheTestFilesHoldAPlaceThatWouldGiveItsTakerAway() throws IOException, ImageProcessingException {
        byte[] file = withSegment(TestPictures.jpeg(), 0xe1, exif(1, "2026:03:01 10:20:30", "-05:00"));

        assertThat(directories(file)).anyMatch(directory -> directory instanceof GpsDirectory);
    }

    private static List<Directory> directories(byte[] file) throws IOException, ImageProcessingException {
        return StreamSupport.stream(
                        ImageMetadataReader.readMetadata(new ByteArrayInputStream(file))
                                .getDirectories()
                                .spliterator(),
                        false)
                .toList();
    }

    @Test
    void aLargePictureIsKeptSmallerAndAThumbnailSmallerStill() {
        Darkroom.Print print = Darkroom.develop(Picture.examine(TestPictures.jpeg(4100, 1300), MOST), 1000);

        assertThat(print.width()).isEqualTo(1000);
        assertThat(print.height()).isBetween(316, 318);
        assertThat(decoded(print.thumbnail()).getWidth()).isEqualTo(480);
        assertThat(fields(decoded(print.picture()))).isEqualTo("0123");
    }

    @Test
    void aVeryLongAndNarrowPictureKeepsAtLeastOnePoint() {
        Darkroom.Print print = Darkroom.develop(Picture.examine(TestPictures.jpeg(9000, 1), MOST), 1000);

        assertThat(print.height()).isEqualTo(1);
        assertThat(decoded(print.thumbnail()).getHeight()).isEqualTo(1);
    }

    @Test
    void whatACameraAppendsIsDropped() {
        byte[] film = joined(TestPictures.jpeg(), new byte[] {0, 0, 0, 24}, text("ftypmp42Secret film"));
        byte[] second = joined(TestPictures.jpeg(), TestPictures.jpeg(40, 40));

        assertThat(new String(print(film).picture(), StandardCharsets.ISO_8859_1))
                .doesNotContain("Secret");
        assertThat(print(second).width()).isEqualTo(320);
    }

    /** Each part of a good file is cut off or spoilt in turn: the file is refused or opened, and nothing else happens. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("goodPictures")
    void aSpoiltFileIsRefusedOrOpenedAndNeverFailsOtherwise(String name, byte[] file) {
        int step = Math.max(1, file.length / 50);
        int refused = 0;
        for (int at = 0; at < file.length; at += step) {
            refused += refuses(part(file, 0, at)) ? 1 : 0;
            byte[] spoilt = file.clone();
            spoilt[at] ^= (byte) 0xff;
            refuses(spoilt);
        }
        assertThat(refused).as("files cut off").isGreaterThanOrEqualTo(file.length / step);
    }

    private static boolean refuses(byte[] file) {
        try {
            print(file);
            return false;
        } catch (BadPicture bad) {
            assertThat(bad.getMessage()).isNotBlank();
            return true;
        }
    }

    @Test
    void dataThatCannotBeDecodedAreCalledDamaged() {
        byte[] png = TestPictures.png();
        byte[] emptied = joined(
                part(png, 0, 33), TestPictures.chunk("IDAT", new byte[20]), TestPictures.chunk("IEND", new byte[0]));

        assertThatThrownBy(() -> print(emptied))
                .isInstanceOf(BadPicture.class)
                .hasMessageContaining("cannot be opened");
    }
}
