package dev.lapwing.photos.domain;

import java.io.ByteArrayOutputStream;

/**
 * Walks through the segments of a JPEG file (ISO/IEC 10918-1, annex B) from its start to its end mark, and keeps those a
 * decoder needs. Walking it whole finds files that are cut off, which decoders fill up with grey.
 */
final class JpegReader {
    private static final int START = 0xd8;
    private static final int END = 0xd9;
    private static final int SCAN = 0xda;
    private static final int NOTES = 0xe1;
    private static final int COMMENT = 0xfe;
    /** The application segments that decoders read colours by: JFIF and Adobe. */
    private static final int JFIF = 0xe0;

    private static final int ADOBE = 0xee;
    /** A progressive picture has about ten; thousands in one small file are made to keep a decoder busy. */
    private static final int MOST_SCANS = 50;

    private final Bytes bytes;
    private final ByteArrayOutputStream bare = new ByteArrayOutputStream();
    private int at = 2;
    private int scans;
    private int width = -1;
    private int height;
    private CameraNotes notes = CameraNotes.NONE;

    JpegReader(Bytes bytes) {
        this.bytes = bytes;
    }

    Picture read() {
        mark(START);
        int marker = nextMarker();
        while (marker != END) {
            segment(marker);
            marker = nextMarker();
        }
        mark(END);
        if (scans == 0) {
            throw BadPicture.damaged("holds no picture data");
        }
        AppendedData.check(bytes.from(at));
        return new Picture(PictureFormat.JPEG, width, height, bare.toByteArray(), notes);
    }

    private void mark(int marker) {
        bare.write(0xff);
        bare.write(marker);
    }

    private int nextMarker() {
        if (bytes.u8(at) != 0xff) {
            throw BadPicture.damaged("is damaged: its parts do not follow each other");
        }
        while (bytes.u8(at) == 0xff) {
            at++;
        }
        return bytes.u8(at++);
    }

    private void segment(int marker) {
        if (marker == 0 || marker == START || marker >= 0xd0 && marker <= 0xd7) {
            throw BadPicture.damaged("is damaged: a part is out of place");
        }
        Bytes whole = bytes.part(at, Math.max(2, bytes.u16(at)));
        if (frame(marker)) {
            frameSize(marker, whole);
        }
        if (marker == NOTES && whole.from(2).startsWith("Exif\0\0")) {
            notes = ExifReader.read(whole.from(8));
        }
        if (wanted(marker)) {
            mark(marker);
            bare.write(whole.all(), whole.start(), whole.size());
        }
        at += whole.size();
        if (marker == SCAN) {
            scan();
        }
    }

    private static boolean wanted(int marker) {
        boolean application = marker >= 0xe0 && marker <= 0xef;
        return marker == JFIF || marker == ADOBE || !application && marker != COMMENT;
    }

    private static boolean frame(int marker) {
        return marker >= 0xc0 && marker <= 0xcf && marker != 0xc4 && marker != 0xc8 && marker != 0xcc;
    }

    private void frameSize(int marker, Bytes frame) {
        if (width >= 0) {
            throw BadPicture.damaged("is damaged: it gives its size twice");
        }
        int components = frame.u8(7);
        if (marker > 0xc2 || frame.u8(2) != 8 || components != 1 && components != 3) {
            throw BadPicture.otherType("is a rare kind of JPEG, such as for print; save it as a usual one");
        }
        height = frame.u16(3);
        width = frame.u16(5);
    }

    /** Copies the coded data of a scan, up to the next marker that is not part of it. */
    private void scan() {
        if (width < 0 || ++scans > MOST_SCANS) {
            throw BadPicture.damaged("is damaged: its data come before its size, or in too many pieces");
        }
        int from = at;
        while (bytes.u8(at) != 0xff || inData(bytes.u8(at + 1))) {
            at++;
        }
        bare.write(bytes.all(), bytes.start() + from, at - from);
    }

    private static boolean inData(int afterFf) {
        return afterFf == 0 || afterFf >= 0xd0 && afterFf <= 0xd7 || afterFf == 0xff;
    }
}
