package dev.lapwing.alerts.domain;

/** Makes text from outside safe to put into a mail. */
public final class PlainText {
    private static final String LINE_BREAKERS = "[\\p{Cc}\\u2028\\u2029]+";
    /** Marks that turn the direction of writing can make a text look like another. */
    private static final String DIRECTION_MARKS = "[\\u202A-\\u202E\\u2066-\\u2069\\u200E\\u200F\\uFEFF]";

    private PlainText() {}

    /** Returns the text as one line without control characters: nothing in it can begin another header. */
    public static String oneLine(String text) {
        return whole(text)
                .replaceAll(LINE_BREAKERS, " ")
                .replaceAll(" {2,}", " ")
                .strip();
    }

    /** Returns one line of at most {@code most} UTF-16 units, cut between characters. */
    public static String oneLine(String text, int most) {
        String line = oneLine(text);
        if (line.length() <= most) {
            return line;
        }
        int end = Character.isHighSurrogate(line.charAt(most - 2)) ? most - 2 : most - 1;
        return line.substring(0, end) + "…";
    }

    /** Returns the text with CRLF line ends and no other control characters but tabs. */
    public static String lines(String text) {
        return whole(text)
                .replaceAll("\\r\\n?|[\\n\\u0085\\u2028\\u2029]", "\n")
                .replaceAll("[\\p{Cc}&&[^\\n\\t]]", "")
                .replace("\n", "\r\n");
    }

    private static String whole(String text) {
        String marked = text.replaceAll(DIRECTION_MARKS, "");
        var whole = new StringBuilder(marked.length());
        marked.codePoints()
                .map(point -> point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE ? 0xFFFD : point)
                .forEach(whole::appendCodePoint);
        return whole.toString();
    }
}
