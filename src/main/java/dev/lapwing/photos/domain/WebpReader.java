package dev.lapwing.photos.domain;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Walks through the chunks of a WebP file (RFC 9649) and keeps the one that holds the picture. */
final class WebpReader {
    private static final int ANIMATED = 0x02;
    private static final int FRAME_MARK = 0x9d012a;
    private static final int LOSSLESS_MARK = 0x2f;

    private final Bytes riff;
    private final Bytes rest;
    private int width;
    private int height;
    private byte[] bare;
    private CameraNotes notes = CameraNotes.NONE;

    WebpReader(Bytes bytes) {
        long size = bytes.littleU32(4) + 8;
        riff = bytes.part(0, size);
        rest = bytes.from((int) Math.min(bytes.size(), size + size % 2));
    }

    Picture read() {
        int at = 12;
        while (at < riff.size()) {
            Bytes inside = riff.part(at + 8, riff.littleU32(at + 4));
            chunk(riff.text(at, 4), inside);
            at += 8 + inside.size() + inside.size() % 2;
        }
        if (bare == null) {
            throw BadPicture.damaged("holds no picture data");
        }
        AppendedData.checkNone(rest);
        return new Picture(PictureFormat.WEBP, width, height, bare, notes);
    }

    private void chunk(String type, Bytes inside) {
        switch (type) {
            case "VP8X" -> refuseAnimated((inside.u8(0) & ANIMATED) != 0);
            case "ANIM", "ANMF" -> refuseAnimated(true);
            case "VP8 " -> lossy(inside);
            case "VP8L" -> lossless(inside);
            case "EXIF" -> notes = ExifReader.read(inside.startsWith("Exif\0\0") ? inside.from(6) : inside);
            default -> {
                // Profiles, transparency and notes of other kinds are dropped.
            }
        }
    }

    private static void refuseAnimated(boolean animated) {
        if (animated) {
            throw BadPicture.otherType("is a moving picture; only still ones are taken");
        }
    }

    private void lossy(Bytes inside) {
        if (inside.u8(3) << 16 != (FRAME_MARK & 0xff0000) || inside.u16(4) != (FRAME_MARK & 0xffff)) {
            throw BadPicture.damaged("is damaged: its picture data do not begin as they should");
        }
        keep("VP8 ", inside, inside.littleU16(6) & 0x3fff, inside.littleU16(8) & 0x3fff);
    }

    private void lossless(Bytes inside) {
        if (inside.u8(0) != LOSSLESS_MARK) {
            throw BadPicture.damaged("is damaged: its picture data do not begin as they should");
        }
        long sizes = inside.littleU32(1);
        keep("VP8L", inside, (int) (sizes & 0x3fff) + 1, (int) (sizes >> 14 & 0x3fff) + 1);
    }

    /** Wraps the picture as a plain file of its own, so that no other size than its own counts. */
    private void keep(String type, Bytes inside, int pointsAcross, int pointsDown) {
        if (bare != null) {
            throw BadPicture.damaged("is damaged: it holds two pictures");
        }
        width = pointsAcross;
        height = pointsDown;
        int padded = inside.size() + inside.size() % 2;
        bare = ByteBuffer.allocate(20 + padded)
                .order(ByteOrder.LITTLE_ENDIAN)
                .put("RIFF".getBytes(StandardCharsets.US_ASCII))
                .putInt(12 + padded)
                .put("WEBP".getBytes(StandardCharsets.US_ASCII))
                .put(type.getBytes(StandardCharsets.US_ASCII))
                .putInt(inside.size())
                .put(inside.all(), inside.start(), inside.size())
                .array();
    }
}
