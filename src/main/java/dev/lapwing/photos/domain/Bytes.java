package dev.lapwing.photos.domain;

import java.nio.charset.StandardCharsets;

/** Bytes that are read by place. A place beyond the end means that the file is cut off. */
record Bytes(byte[] all, int start, int end) {
    Bytes(byte[] all) {
        this(all, 0, all.length);
    }

    int size() {
        return end - start;
    }

    int u8(int at) {
        if (at < 0 || at >= size()) {
            throw BadPicture.cutOff();
        }
        return all[start + at] & 0xff;
    }

    int u16(int at) {
        return u8(at) << 8 | u8(at + 1);
    }

    /** Returns 32 bits, most significant first, as a number that is not negative. */
    long u32(int at) {
        return (long) u16(at) << 16 | u16(at + 2);
    }

    /** Returns 16 bits, least significant first. */
    int littleU16(int at) {
        return u8(at) | u8(at + 1) << 8;
    }

    long littleU32(int at) {
        return littleU16(at) | (long) littleU16(at + 2) << 16;
    }

    /** Returns the part of so many bytes; a length that leads beyond the end means that the file is cut off. */
    Bytes part(int at, long length) {
        if (at < 0 || length < 0 || at + length > size()) {
            throw BadPicture.cutOff();
        }
        return new Bytes(all, start + at, (int) (start + at + length));
    }

    Bytes from(int at) {
        return part(at, Math.max(0, size() - at));
    }

    String text(int at, int length) {
        Bytes part = part(at, length);
        return new String(all, part.start, length, StandardCharsets.ISO_8859_1);
    }

    boolean startsWith(String text) {
        return size() >= text.length() && text(0, text.length()).equals(text);
    }
}
