package dev.lapwing.fleet.imports;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Hands out a UTF-8 file at most one line at a time, so that whoever reads it never runs ahead of the line it is in. It
 * counts the lines, keeps those of the record being read, so that all but its first can be read anew, and notes bytes
 * that are not UTF-8 instead of failing on them. A byte-order mark is left out.
 */
final class LineSource extends Reader {
    /** A record longer than this many bytes is not one: most likely a quote was never closed. */
    static final int LONGEST_RECORD = 1_000_000;

    private static final byte[] BYTE_ORDER_MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    /** A record that is longer than any. */
    static final class TooLong extends IOException {
        private static final long serialVersionUID = 1L;

        TooLong() {
            super("is longer than " + LONGEST_RECORD + " bytes; is a quote not closed?");
        }
    }

    private record Line(String text, int bytes, boolean utf8) {}

    private final InputStream bytes;
    private final Deque<Line> toReadAnew = new ArrayDeque<>();
    private final List<Line> record = new ArrayList<>();
    private String text = "";
    private int position;
    private int linesRead;
    private int recordBytes;
    private long bytesRead;

    LineSource(InputStream file) throws IOException {
        bytes = new BufferedInputStream(file, 1 << 16);
        bytes.mark(BYTE_ORDER_MARK.length);
        if (!Arrays.equals(bytes.readNBytes(BYTE_ORDER_MARK.length), BYTE_ORDER_MARK)) {
            bytes.reset();
        }
    }

    /** Marks that a new record begins with the next line. */
    void beginRecord() {
        record.clear();
        recordBytes = 0;
    }

    /** Returns how many lines were handed out, the one being read included. */
    int linesRead() {
        return linesRead;
    }

    /** Returns how many bytes of the file were handed out. */
    long bytesRead() {
        return bytesRead;
    }

    /** Returns whether all bytes of the record being read are UTF-8. */
    boolean utf8() {
        return record.stream().allMatch(Line::utf8);
    }

    /** Goes back to the end of the first line of the record being read. */
    void rewindToSecondLine() {
        for (int i = record.size() - 1; i > 0; i--) {
            toReadAnew.addFirst(record.get(i));
            linesRead--;
            bytesRead -= record.get(i).bytes();
        }
        position = text.length();
    }

    @Override
    public int read(char[] target, int offset, int length) throws IOException {
        if (length == 0) {
            return 0;
        }
        if (position == text.length() && !nextLine()) {
            return -1;
        }
        int count = Math.min(length, text.length() - position);
        text.getChars(position, position + count, target, offset);
        position += count;
        return count;
    }

    private boolean nextLine() throws IOException {
        Line line = toReadAnew.isEmpty() ? rawLine() : toReadAnew.removeFirst();
        if (line.bytes() == 0) {
            return false;
        }
        linesRead++;
        record.add(line);
        recordBytes += line.bytes();
        bytesRead += line.bytes();
        text = line.text();
        position = 0;
        if (recordBytes > LONGEST_RECORD) {
            throw new TooLong();
        }
        return true;
    }

    /** Reads a line with its end (LF or CR LF), empty at the end of the file; one that is far too long is cut. */
    private Line rawLine() throws IOException {
        var raw = new ByteArrayOutputStream(256);
        int length = 0;
        int next = bytes.read();
        while (next >= 0) {
            if (++length <= LONGEST_RECORD) {
                raw.write(next);
            }
            if (next == '\n') {
                break;
            }
            next = bytes.read();
        }
        return decode(raw.toByteArray(), length);
    }

    private static Line decode(byte[] raw, int length) {
        try {
            String strict = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(raw))
                    .toString();
            return new Line(strict, length, true);
        } catch (CharacterCodingException notUtf8) {
            return new Line(new String(raw, StandardCharsets.UTF_8), length, false);
        }
    }

    @Override
    public void close() throws IOException {
        bytes.close();
    }
}
