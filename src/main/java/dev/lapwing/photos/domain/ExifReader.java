package dev.lapwing.photos.domain;

import java.time.DateTimeException;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * Reads the time and the orientation out of Exif notes: a TIFF header and directories of twelve-byte entries (Exif 2.32,
 * section 4.6). Looks at two directories and nothing else, so that notes cannot lead it in circles.
 */
final class ExifReader {
    private static final int ORIENTATION = 0x0112;
    private static final int CHANGED_AT = 0x0132;
    private static final int EXIF_DIRECTORY = 0x8769;
    private static final int TAKEN_AT = 0x9003;
    private static final int TAKEN_OFFSET = 0x9011;
    private static final int ENTRY_BYTES = 12;
    private static final int SHORT = 3;
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu:MM:dd HH:mm:ss", Locale.ROOT);

    private final Bytes tiff;
    private final boolean little;

    private ExifReader(Bytes tiff) {
        this.tiff = tiff;
        this.little = tiff.startsWith("II");
    }

    /** Returns what the notes say, beginning at the TIFF header. Notes that cannot be read say nothing. */
    static CameraNotes read(Bytes tiff) {
        try {
            return tiff.startsWith("II") || tiff.startsWith("MM") ? new ExifReader(tiff).notes() : CameraNotes.NONE;
        } catch (BadPicture brokenNotes) {
            // A picture with broken notes is still a picture: the notes are dropped in any case.
            return CameraNotes.NONE;
        }
    }

    private CameraNotes notes() {
        int first = place(4);
        int exif = entry(first, EXIF_DIRECTORY);
        int directory = exif < 0 ? -1 : place(exif + 8);
        LocalDateTime taken = directory < 0 ? null : time(entry(directory, TAKEN_AT));
        ZoneOffset offset = taken == null ? null : offset(entry(directory, TAKEN_OFFSET));
        return new CameraNotes(
                orientation(entry(first, ORIENTATION)), taken != null ? taken : time(entry(first, CHANGED_AT)), offset);
    }

    private int u16(int at) {
        return little ? tiff.littleU16(at) : tiff.u16(at);
    }

    private int place(int at) {
        long place = little ? tiff.littleU32(at) : tiff.u32(at);
        if (place > tiff.size()) {
            throw BadPicture.cutOff();
        }
        return (int) place;
    }

    /** Returns the place of an entry of a directory, or -1. */
    private int entry(int directory, int tag) {
        int count = u16(directory);
        for (int i = 0; i < count; i++) {
            int at = directory + 2 + i * ENTRY_BYTES;
            if (u16(at) == tag) {
                return at;
            }
        }
        return -1;
    }

    private int orientation(int entry) {
        if (entry < 0 || u16(entry + 2) != SHORT) {
            return 1;
        }
        int value = u16(entry + 8);
        return value >= 1 && value <= 8 ? value : 1;
    }

    private LocalDateTime time(int entry) {
        try {
            return entry < 0 ? null : LocalDateTime.parse(tiff.text(place(entry + 8), 19), TIME);
        } catch (DateTimeException clockNotSet) {
            return null;
        }
    }

    private ZoneOffset offset(int entry) {
        try {
            return entry < 0 ? null : ZoneOffset.of(tiff.text(place(entry + 8), 6));
        } catch (DateTimeException notNoted) {
            return null;
        }
    }
}
