package dev.lapwing.photos.domain;

import java.io.ByteArrayOutputStream;
import java.util.Set;
import java.util.zip.CRC32;

/**
 * Walks through the chunks of a PNG file (ISO/IEC 15948, section 5.3) and keeps those a decoder needs, each with its
 * check sum verified. Compressed texts and profiles, which can swell when opened, are dropped unopened.
 */
final class PngReader {
    private static final Set<String> WANTED = Set.of("IHDR", "PLTE", "tRNS", "IDAT", "IEND");
    /** Length and type before the data, check sum after them. */
    private static final int AROUND = 12;

    private static final int SIGNATURE = 8;

    private final Bytes bytes;
    private final ByteArrayOutputStream bare = new ByteArrayOutputStream();
    private int at = SIGNATURE;
    private boolean data;
    private CameraNotes notes = CameraNotes.NONE;

    PngReader(Bytes bytes) {
        this.bytes = bytes;
    }

    Picture read() {
        if (!bytes.text(at + 4, 4).equals("IHDR") || bytes.u32(at) != 13) {
            throw BadPicture.damaged("is damaged: its size does not come first");
        }
        long width = bytes.u32(at + 8);
        long height = bytes.u32(at + 12);
        if (width > Integer.MAX_VALUE || height > Integer.MAX_VALUE) {
            throw BadPicture.damaged("has an impossible size");
        }
        bare.write(bytes.all(), bytes.start(), SIGNATURE);
        String type;
        do {
            type = chunk();
        } while (!type.equals("IEND"));
        if (!data) {
            throw BadPicture.damaged("holds no picture data");
        }
        AppendedData.checkNone(bytes.from(at));
        return new Picture(PictureFormat.PNG, (int) width, (int) height, bare.toByteArray(), notes);
    }

    private String chunk() {
        Bytes whole = bytes.part(at, bytes.u32(at) + AROUND);
        String type = whole.text(4, 4);
        Bytes inside = whole.part(8, whole.size() - AROUND);
        if (type.equals("acTL")) {
            throw BadPicture.otherType("is a moving picture; only still ones are taken");
        }
        if (type.equals("eXIf")) {
            notes = ExifReader.read(inside);
        }
        data |= type.equals("IDAT");
        if (WANTED.contains(type)) {
            checkSum(whole);
            bare.write(whole.all(), whole.start(), whole.size());
        }
        at += whole.size();
        return type;
    }

    private static void checkSum(Bytes whole) {
        var sum = new CRC32();
        sum.update(whole.all(), whole.start() + 4, whole.size() - 8);
        if (sum.getValue() != whole.u32(whole.size() - 4)) {
            throw BadPicture.damaged("is damaged: a check sum does not match");
        }
    }
}
