package dev.lapwing.photos;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;

/** Pictures of four coloured fields, red and green above blue and yellow, good ones and those made to do harm. */
public final class TestPictures {
    public static final int WIDTH = 320;
    public static final int HEIGHT = 200;
    private static final Color[] FIELDS = {
        new Color(0xc02020), new Color(0x20a040), new Color(0x2040c0), new Color(0xe0d020)
    };

    private TestPictures() {}

    public static byte[] jpeg() {
        return encoded("jpg", WIDTH, HEIGHT);
    }

    /** Returns a JPEG that no other test has: its size differs. */
    public static byte[] jpeg(int width, int height) {
        return encoded("jpg", width, height);
    }

    public static byte[] png() {
        return encoded("png", WIDTH, HEIGHT);
    }

    public static byte[] gif() {
        return encoded("gif", WIDTH, HEIGHT);
    }

    public static byte[] lossyWebp() {
        return resource("four-colours-lossy.webp");
    }

    public static byte[] losslessWebp() {
        return resource("four-colours-lossless.webp");
    }

    private static byte[] encoded(String format, int width, int height) {
        var image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = image.createGraphics();
        for (int i = 0; i < FIELDS.length; i++) {
            brush.setColor(FIELDS[i]);
            brush.fillRect(i % 2 * width / 2, i / 2 * height / 2, (width + 1) / 2, (height + 1) / 2);
        }
        brush.dispose();
        var bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image, format, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.toByteArray();
    }

    private static byte[] resource(String name) {
        try (var in = TestPictures.class.getResourceAsStream("/photos/" + name)) {
            return in.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public static BufferedImage decoded(byte[] bytes) {
        try {
            return ImageIO.read(new ByteArrayInputStream(bytes));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Returns the numbers of the four fields, row by row, as they lie in a picture: 0123 when it is upright. */
    public static String fields(BufferedImage image) {
        var order = new StringBuilder();
        for (int i = 0; i < FIELDS.length; i++) {
            int x = image.getWidth() * (1 + i % 2 * 2) / 4;
            int y = image.getHeight() * (1 + i / 2 * 2) / 4;
            order.append(nearest(new Color(image.getRGB(x, y))));
        }
        return order.toString();
    }

    private static int nearest(Color seen) {
        int best = 0;
        for (int i = 1; i < FIELDS.length; i++) {
            best = distance(FIELDS[i], seen) < distance(FIELDS[best], seen) ? i : best;
        }
        return best;
    }

    private static int distance(Color one, Color other) {
        return Math.abs(one.getRed() - other.getRed())
                + Math.abs(one.getGreen() - other.getGreen())
                + Math.abs(one.getBlue() - other.getBlue());
    }

    /** Puts a segment behind the start mark of a JPEG. */
    public static byte[] withSegment(byte[] jpeg, int marker, byte[] inside) {
        ByteBuffer segment = ByteBuffer.allocate(4 + inside.length)
                .put((byte) 0xff)
                .put((byte) marker)
                .putShort((short) (inside.length + 2))
                .put(inside);
        return joined(part(jpeg, 0, 2), segment.array(), part(jpeg, 2, jpeg.length));
    }

    /** Returns Exif notes with an orientation, a time with offset, a camera's name and a place on the globe. */
    public static byte[] exif(int orientation, String taken, String offset) {
        byte[] tiff = new byte[260];
        var notes = ByteBuffer.wrap(tiff);
        notes.put("MM\0*".getBytes(StandardCharsets.ISO_8859_1)).putInt(8);
        notes.putShort((short) 4);
        entry(notes, 0x010f, 2, 16, 120);
        notes.putShort((short) 0x0112)
                .putShort((short) 3)
                .putInt(1)
                .putShort((short) orientation)
                .putShort((short) 0);
        entry(notes, 0x8769, 4, 1, 80);
        entry(notes, 0x8825, 4, 1, 180);
        notes.position(80);
        notes.putShort((short) 2);
        entry(notes, 0x9003, 2, 20, 140);
        entry(notes, 0x9011, 2, 7, 164);
        put(tiff, 120, "Secret Camera X\0");
        put(tiff, 140, taken + "\0");
        put(tiff, 164, offset + "\0");
        notes.position(180);
        notes.putShort((short) 2);
        notes.putShort((short) 1).putShort((short) 2).putInt(2).put("N\0\0\0".getBytes(StandardCharsets.ISO_8859_1));
        entry(notes, 2, 5, 3, 220);
        notes.position(220);
        notes.putInt(54).putInt(1).putInt(30).putInt(1).putInt(7).putInt(1);
        return joined("Exif\0\0".getBytes(StandardCharsets.ISO_8859_1), tiff);
    }

    private static void entry(ByteBuffer notes, int tag, int type, int count, int value) {
        notes.putShort((short) tag).putShort((short) type).putInt(count).putInt(value);
    }

    private static void put(byte[] into, int at, String text) {
        byte[] bytes = text.getBytes(StandardCharsets.ISO_8859_1);
        System.arraycopy(bytes, 0, into, at, bytes.length);
    }

    /** Returns one PNG chunk with its check sum. */
    public static byte[] chunk(String type, byte[] inside) {
        byte[] named = joined(type.getBytes(StandardCharsets.ISO_8859_1), inside);
        var sum = new CRC32();
        sum.update(named);
        return ByteBuffer.allocate(named.length + 8)
                .putInt(inside.length)
                .put(named)
                .putInt((int) sum.getValue())
                .array();
    }

    /** Puts a chunk behind the header of a PNG. */
    public static byte[] withChunk(byte[] png, byte[] chunk) {
        return joined(part(png, 0, 33), chunk, part(png, 33, png.length));
    }

    /** Returns a PNG whose header claims a size that its data do not have. */
    public static byte[] pngClaiming(int width, int height) {
        byte[] header = ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, 2, 0, 0, 0})
                .array();
        byte[] png = png();
        return joined(part(png, 0, 8), chunk("IHDR", header), part(png, 33, png.length));
    }

    /** Returns a JPEG whose frame claims another size. */
    public static byte[] jpegClaiming(int width, int height) {
        byte[] jpeg = jpeg().clone();
        for (int at = 2; at < jpeg.length - 9; at++) {
            if ((jpeg[at] & 0xff) == 0xff && (jpeg[at + 1] & 0xff) == 0xc0) {
                ByteBuffer.wrap(jpeg, at + 5, 4).putShort((short) height).putShort((short) width);
                return jpeg;
            }
        }
        throw new IllegalStateException("the JPEG has no frame");
    }

    public static byte[] part(byte[] bytes, int from, int to) {
        return java.util.Arrays.copyOfRange(bytes, from, to);
    }

    public static byte[] text(String text) {
        return text.getBytes(StandardCharsets.ISO_8859_1);
    }

    public static byte[] joined(byte[]... parts) {
        var all = new ByteArrayOutputStream();
        for (byte[] part : parts) {
            all.writeBytes(part);
        }
        return all.toByteArray();
    }
}
