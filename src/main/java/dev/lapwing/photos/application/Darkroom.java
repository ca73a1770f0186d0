package dev.lapwing.photos.application;

import com.twelvemonkeys.imageio.plugins.webp.WebPImageReaderSpi;
import dev.lapwing.photos.domain.BadPicture;
import dev.lapwing.photos.domain.Picture;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageInputStream;
import javax.imageio.stream.MemoryCacheImageOutputStream;

/** Decodes a picture, turns it upright, makes it smaller where needed, and writes it anew as a JPEG without any notes. */
final class Darkroom {
    private static final float QUALITY = 0.87f;
    private static final int THUMBNAIL_SIDE = 480;
    private static final int QUARTER_TURNED = 5;

    private Darkroom() {}

    /** A picture as it is kept. */
    record Print(byte[] picture, byte[] thumbnail, int width, int height) {}

    /**
     * Makes the print of a picture.
     *
     * @param longestSide points of the longer side, at most
     * @throws BadPicture when it cannot be decoded
     */
    static Print develop(Picture picture, int longestSide) {
        try {
            BufferedImage upright = upright(decode(picture, longestSide), picture.orientation());
            BufferedImage kept = atMost(upright, longestSide);
            return new Print(jpeg(kept), jpeg(atMost(kept, THUMBNAIL_SIDE)), kept.getWidth(), kept.getHeight());
        } catch (IOException | RuntimeException broken) {
            if (broken instanceof BadPicture bad) {
                throw bad;
            }
            // Decoders answer broken data with whatever exception they trip over.
            var damaged = BadPicture.damaged("is damaged and cannot be opened");
            damaged.initCause(broken);
            throw damaged;
        }
    }

    private static ImageReader reader(Picture picture) {
        return switch (picture.format()) {
            case JPEG -> ImageIO.getImageReadersByFormatName("jpeg").next();
            case PNG -> ImageIO.getImageReadersByFormatName("png").next();
            case WEBP -> new WebPImageReaderSpi().createReaderInstance(null);
        };
    }

    /** Decodes no more points than are needed: of a very large picture only every second, third... in each direction. */
    private static BufferedImage decode(Picture picture, int longestSide) throws IOException {
        ImageReader reader = reader(picture);
        try (var bytes = new MemoryCacheImageInputStream(new ByteArrayInputStream(picture.bare()))) {
            reader.setInput(bytes, true, true);
            if (reader.getWidth(0) != picture.width() || reader.getHeight(0) != picture.height()) {
                throw BadPicture.damaged("is damaged: it gives two sizes");
            }
            ImageReadParam how = reader.getDefaultReadParam();
            int step = Math.max(1, Math.max(picture.width(), picture.height()) / longestSide);
            how.setSourceSubsampling(step, step, 0, 0);
            return reader.read(0, how);
        } finally {
            reader.dispose();
        }
    }

    /** Draws a picture on white as it was seen: Exif numbers the four turns, each also mirrored, from 1 to 8. */
    private static BufferedImage upright(BufferedImage image, int orientation) {
        int width = image.getWidth();
        int height = image.getHeight();
        boolean turned = orientation >= QUARTER_TURNED;
        AffineTransform move =
                switch (orientation) {
                    case 2 -> new AffineTransform(-1, 0, 0, 1, width, 0);
                    case 3 -> new AffineTransform(-1, 0, 0, -1, width, height);
                    case 4 -> new AffineTransform(1, 0, 0, -1, 0, height);
                    case 5 -> new AffineTransform(0, 1, 1, 0, 0, 0);
                    case 6 -> new AffineTransform(0, 1, -1, 0, height, 0);
                    case 7 -> new AffineTransform(0, -1, -1, 0, height, width);
                    case 8 -> new AffineTransform(0, -1, 1, 0, 0, width);
                    default -> new AffineTransform();
                };
        return drawn(image, turned ? height : width, turned ? width : height, move);
    }

    /** Halves a picture until one last, smaller step leads to the wanted size; one big step would lose fine lines. */
    private static BufferedImage atMost(BufferedImage image, int longestSide) {
        BufferedImage smaller = image;
        int longest = Math.max(image.getWidth(), image.getHeight());
        while (longest > longestSide) {
            double share = Math.max(0.5, (double) longestSide / longest);
            int width = Math.max(1, (int) Math.round(smaller.getWidth() * share));
            int height = Math.max(1, (int) Math.round(smaller.getHeight() * share));
            smaller = drawn(
                    smaller,
                    width,
                    height,
                    AffineTransform.getScaleInstance(
                            (double) width / smaller.getWidth(), (double) height / smaller.getHeight()));
            longest = Math.max(width, height);
        }
        return smaller;
    }

    private static BufferedImage drawn(BufferedImage image, int width, int height, AffineTransform move) {
        var target = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = target.createGraphics();
        brush.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        brush.setColor(Color.WHITE);
        brush.fillRect(0, 0, width, height);
        brush.drawImage(image, move, null);
        brush.dispose();
        return target;
    }

    private static byte[] jpeg(BufferedImage image) throws IOException {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        var bytes = new ByteArrayOutputStream();
        try (var out = new MemoryCacheImageOutputStream(bytes)) {
            writer.setOutput(out);
            ImageWriteParam how = writer.getDefaultWriteParam();
            how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            how.setCompressionQuality(QUALITY);
            writer.write(null, new IIOImage(image, null, null), how);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
