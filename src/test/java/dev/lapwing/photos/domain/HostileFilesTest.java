package dev.lapwing.photos.domain;

import static dev.lapwing.photos.TestPictures.chunk;
import static dev.lapwing.photos.TestPictures.joined;
import static dev.lapwing.photos.TestPictures.part;
import static dev.lapwing.photos.TestPictures.text;
import static dev.lapwing.photos.TestPictures.withChunk;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.photos.TestPictures;
import dev.lapwing.photos.domain.BadPicture.Why;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.stream.Stream;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Files that are no pictures, or pictures made to do harm, are refused by their first look, before any decoding. */
public class HostileFilesTest {
    private static final long MOST = 50_000_000;

    /** Returns the files by name, with why each is refused and a piece of the message. */
    public static Stream<Arguments> files() {
        byte[] jpeg = TestPictures.jpeg();
        byte[] png = TestPictures.png();
        byte[] webp = TestPictures.lossyWebp();
        return Stream.of(
                file("nothing", new byte[0], Why.DAMAGED, "empty"),
                file("two bytes", new byte[] {(byte) 0xff, (byte) 0xd8}, Why.OTHER_TYPE, "not a JPEG"),
                file("plain text", text("the roof looks fine"), Why.OTHER_TYPE, "not a JPEG"),
                file("SVG", text("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>"), Why.OTHER_TYPE, "not"),
                file("HTML", text("<!doctype html><script>alert(1)</script>"), Why.OTHER_TYPE, "not a JPEG"),
                file("GIF", TestPictures.gif(), Why.OTHER_TYPE, "not a JPEG"),
                file("GIF with HTML", text("GIF89a<script>alert(1)</script>"), Why.OTHER_TYPE, "not a JPEG"),
                file("JPEG cut off", part(jpeg, 0, jpeg.length / 2), Why.DAMAGED, "cut off"),
                file("JPEG without end", part(jpeg, 0, jpeg.length - 2), Why.DAMAGED, "cut off"),
                file("JPEG of 50000 by 50000", TestPictures.jpegClaiming(50_000, 50_000), Why.TOO_LARGE, "million"),
                file("JPEG of no height", TestPictures.jpegClaiming(320, 0), Why.DAMAGED, "no height"),
                file("JPEG of many scans", manyScans(jpeg), Why.DAMAGED, "too many pieces"),
                file("JPEG for print", fourColours(jpeg), Why.OTHER_TYPE, "for print"),
                file("JPEG and ZIP", joined(jpeg, text("PK\3\4evil")), Why.OTHER_TYPE, "something else"),
                file(
                        "JPEG and HTML",
                        joined(jpeg, text("<script>alert(1)</script>")),
                        Why.OTHER_TYPE,
                        "something else"),
                file("JPEG and PHP", joined(jpeg, text("<?php echo 1 ?>")), Why.OTHER_TYPE, "something else"),
                file("PNG cut off", part(png, 0, png.length - 20), Why.DAMAGED, "cut off"),
                file("PNG of 50000 by 50000", TestPictures.pngClaiming(50_000, 50_000), Why.TOO_LARGE, "50000 × 50000"),
                file("PNG of the largest size", TestPictures.pngClaiming(-1, -1), Why.DAMAGED, "impossible"),
                file("PNG with a huge chunk", withChunk(png, hugeChunk()), Why.DAMAGED, "cut off"),
                file("PNG with a wrong check sum", wrongSum(png), Why.DAMAGED, "check sum"),
                file("moving PNG", withChunk(png, chunk("acTL", new byte[8])), Why.OTHER_TYPE, "moving"),
                file("PNG and ZIP", joined(png, text("PK\3\4evil")), Why.OTHER_TYPE, "something else"),
                file("WebP cut off", part(webp, 0, webp.length - 10), Why.DAMAGED, "cut off"),
                file("WebP of 16000 by 16000", webpClaiming(webp, 16_000), Why.TOO_LARGE, "at most 12 million"),
                file("moving WebP", movingWebp(webp), Why.OTHER_TYPE, "moving"),
                file("WebP and HTML", joined(webp, text("<script>")), Why.OTHER_TYPE, "something else"),
                file("RIFF of sound", text("RIFF\4\0\0\0WAVE"), Why.OTHER_TYPE, "not a JPEG"),
                file("empty WebP", text("RIFF\4\0\0\0WEBP"), Why.DAMAGED, "no picture"));
    }

    private static Arguments file(String name, byte[] bytes, Why why, String message) {
        return Arguments.of(name, bytes, why, message);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("files")
    void isRefused(String name, byte[] file, Why why, String message) {
        assertThatThrownBy(() -> Picture.examine(file, MOST))
                .hasMessageContaining(message)
                .asInstanceOf(InstanceOfAssertFactories.type(BadPicture.class))
                .extracting(BadPicture::why)
                .isEqualTo(why);
    }

    /** Repeats the scan of a small picture so often that a decoder would be busy for long. */
    private static byte[] manyScans(byte[] jpeg) {
        int scan = find(jpeg, 0xda);
        byte[] one = part(jpeg, scan, jpeg.length - 2);
        byte[] all = part(jpeg, 0, scan);
        for (int i = 0; i < 60; i++) {
            all = joined(all, one);
        }
        return joined(all, new byte[] {(byte) 0xff, (byte) 0xd9});
    }

    private static byte[] fourColours(byte[] jpeg) {
        byte[] other = jpeg.clone();
        other[find(jpeg, 0xc0) + 9] = 4;
        return other;
    }

    private static int find(byte[] jpeg, int marker) {
        for (int at = 2; at < jpeg.length - 1; at++) {
            if ((jpeg[at] & 0xff) == 0xff && (jpeg[at + 1] & 0xff) == marker) {
                return at;
            }
        }
        throw new IllegalStateException("the JPEG has no such marker");
    }

    private static byte[] hugeChunk() {
        return joined(ByteBuffer.allocate(4).putInt(0x7fffffff).array(), text("zTXt"), new byte[64]);
    }

    private static byte[] wrongSum(byte[] png) {
        byte[] other = png.clone();
        other[29] ^= 1;
        return other;
    }

    /** Writes another size behind the mark that begins a lossy picture. */
    private static byte[] webpClaiming(byte[] webp, int side) {
        byte[] other = webp.clone();
        for (int at = 0; at < other.length - 7; at++) {
            if ((other[at] & 0xff) == 0x9d && other[at + 1] == 1 && other[at + 2] == 0x2a) {
                ByteBuffer.wrap(other, at + 3, 4)
                        .order(ByteOrder.LITTLE_ENDIAN)
                        .putShort((short) side)
                        .putShort((short) side);
                return other;
            }
        }
        throw new IllegalStateException("the WebP has no frame");
    }

    private static byte[] movingWebp(byte[] webp) {
        byte[] extended = joined(text("VP8X\12\0\0\0"), new byte[] {2, 0, 0, 0, 63, 1, 0, (byte) 199, 0, 0});
        byte[] all = joined(part(webp, 0, 12), extended, part(webp, 12, webp.length));
        ByteBuffer.wrap(all).order(ByteOrder.LITTLE_ENDIAN).putInt(4, all.length - 8);
        return all;
    }
}
