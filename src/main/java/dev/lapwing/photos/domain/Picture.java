package dev.lapwing.photos.domain;

import java.time.Instant;
import java.time.ZoneId;

/**
 * A file that looks like one whole picture by its own account; whether it can be decoded is not yet known.
 *
 * @param width points across as stored, before it is turned upright
 * @param bare the file with nothing in it but what a decoder needs: no notes, profiles, previews or appended data
 */
public record Picture(PictureFormat format, int width, int height, byte[] bare, CameraNotes notes) {
    /** The decoder of WebP holds the whole picture several times over, so that it gets a fourth of the points. */
    private static final int WEBP_SHARE = 4;

    /** Returns how the camera was held, 1 to 8 as Exif numbers it. */
    public int orientation() {
        return notes.orientation();
    }

    /** Returns when it was taken by the camera's clock, or null; a clock without offset is taken as of the zone. */
    public Instant takenAt(ZoneId zone) {
        return notes.takenIn(zone);
    }

    /**
     * Looks at a file.
     *
     * @param mostPoints most points in all, of WebP a fourth of it; more are refused before anything is decoded
     * @throws BadPicture when it is no picture that is taken
     */
    public static Picture examine(byte[] file, long mostPoints) {
        var bytes = new Bytes(file);
        if (bytes.size() == 0) {
            throw BadPicture.damaged("is empty");
        }
        Picture picture = read(bytes);
        if (picture.width == 0 || picture.height == 0) {
            throw BadPicture.damaged("has no width or no height");
        }
        long most = picture.format == PictureFormat.WEBP ? mostPoints / WEBP_SHARE : mostPoints;
        if ((long) picture.width * picture.height > most) {
            throw BadPicture.tooLarge("has " + picture.width + " × " + picture.height + " points; at most "
                    + most / 1_000_000 + " million are taken");
        }
        return picture;
    }

    private static Picture read(Bytes bytes) {
        if (bytes.startsWith("\u00ff\u00d8\u00ff")) {
            return new JpegReader(bytes).read();
        }
        if (bytes.startsWith("\u0089PNG\r\n\u001a\n")) {
            return new PngReader(bytes).read();
        }
        if (bytes.startsWith("RIFF") && bytes.size() >= 12 && bytes.text(8, 4).equals("WEBP")) {
            return new WebpReader(bytes).read();
        }
        throw BadPicture.otherType("is not a JPEG, PNG or WebP picture");
    }
}
