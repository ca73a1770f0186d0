package dev.lapwing.alerts.domain;

import java.nio.charset.StandardCharsets;
import java.util.Base64;

/**
 * Writes unstructured text and names as header values: folded, and encoded by RFC 2047 where they are not plain ASCII.
 *
 * <p>An encoded word has at most 75 characters and a line with one at most 76, the header's name included (RFC 2047
 * section 2), and each word holds whole characters only (section 5), so texts are cut by code points while they are
 * encoded.
 */
public final class HeaderWords {
    private static final String OPEN = "=?UTF-8?B?";
    private static final String CLOSE = "?=";
    private static final int LONGEST_LINE = 76;
    private static final int LONGEST_ATOM = 60;
    private static final String FOLD = "\r\n ";

    private HeaderWords() {}

    /** Returns the value of a header such as Subject. */
    public static String text(String header, String value) {
        String line = PlainText.oneLine(value);
        int used = header.length() + 2;
        return needsEncoding(line) ? encoded(line, used) : folded(line, used);
    }

    /** Returns a mailbox with its name, as in To. The address must have been checked; an empty name is left out. */
    public static String mailbox(String header, String name, String address) {
        String line = PlainText.oneLine(name);
        if (line.isEmpty()) {
            return address;
        }
        int used = header.length() + 2;
        String quoted = '"' + line.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
        boolean plain = !needsEncoding(line) && used + quoted.length() <= LONGEST_LINE;
        return (plain ? quoted : encoded(line, used)) + FOLD + '<' + address + '>';
    }

    private static boolean needsEncoding(String line) {
        boolean ascii = line.chars().allMatch(c -> c >= ' ' && c < 127);
        return !ascii || line.contains("=?") || longestAtom(line) > LONGEST_ATOM;
    }

    private static int longestAtom(String line) {
        int longest = 0;
        for (String atom : line.split(" ", -1)) {
            longest = Math.max(longest, atom.length());
        }
        return longest;
    }

    private static String encoded(String line, int used) {
        var value = new StringBuilder();
        var word = new StringBuilder();
        int room = room(used);
        int bytes = 0;
        for (int point : line.codePoints().toArray()) {
            String character = Character.toString(point);
            int size = character.getBytes(StandardCharsets.UTF_8).length;
            if (bytes + size > room) {
                value.append(encodedWord(word)).append(FOLD);
                word.setLength(0);
                bytes = 0;
                room = room(1);
            }
            word.append(character);
            bytes += size;
        }
        return value.append(encodedWord(word)).toString();
    }

    /** Returns how many bytes of text an encoded word bears on a line of which so much is used. */
    private static int room(int used) {
        return (LONGEST_LINE - used - OPEN.length() - CLOSE.length()) / 4 * 3;
    }

    private static String encodedWord(CharSequence text) {
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        return OPEN + Base64.getEncoder().encodeToString(bytes) + CLOSE;
    }

    private static String folded(String line, int used) {
        var value = new StringBuilder();
        int length = used;
        for (String atom : line.split(" ", -1)) {
            boolean first = value.isEmpty();
            if (!first && length + 1 + atom.length() > LONGEST_LINE) {
                value.append(FOLD);
                length = 1;
            } else if (!first) {
                value.append(' ');
                length++;
            }
            value.append(atom);
            length += atom.length();
        }
        return value.toString();
    }
}
