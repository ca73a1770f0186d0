package dev.lapwing.reading;

/**
 * A note made fit for breaking into words. Characters that print nothing (controls, zero-width characters, direction
 * marks, unpaired surrogates) are left out, and stops between letters ("roof.The", "low_branch") become blanks. Keeps
 * the way back to the original indices.
 */
final class CleanText {
    private final String text;
    /** Original index of each kept character and of the end; null when nothing was left out. */
    private final int[] origin;

    private CleanText(String text, int[] origin) {
        this.text = text;
        this.origin = origin;
    }

    static CleanText of(String note) {
        int length = note.length();
        for (int i = 0; i < length; i++) {
            char c = note.charAt(i);
            if (c == '_' || c >= 0x7f || c < ' ' || (c == '.' || c == ':') && betweenLetters(note, i)) {
                return cleaned(note);
            }
        }
        return new CleanText(note, null);
    }

    private static CleanText cleaned(String note) {
        StringBuilder kept = new StringBuilder(note.length());
        int[] origin = new int[note.length() + 1];
        for (int i = 0; i < note.length(); i++) {
            char c = note.charAt(i);
            if (prints(note, i, c)) {
                origin[kept.length()] = i;
                kept.append(c == '_' || (c == '.' || c == ':') && betweenLetters(note, i) ? ' ' : c);
            }
        }
        origin[kept.length()] = note.length();
        return new CleanText(kept.toString(), kept.length() == note.length() ? null : origin);
    }

    private static boolean prints(String note, int i, char c) {
        if (c < 0x7f) {
            return c >= ' ' || c == '\n' || c == '\r' || c == '\t';
        }
        if (Character.isHighSurrogate(c)) {
            return i + 1 < note.length() && Character.isLowSurrogate(note.charAt(i + 1));
        }
        if (Character.isLowSurrogate(c)) {
            return i > 0 && Character.isHighSurrogate(note.charAt(i - 1));
        }
        int type = Character.getType(c);
        return type != Character.CONTROL && type != Character.FORMAT || c == '\u0085';
    }

    private static boolean betweenLetters(String note, int i) {
        return i > 0
                && i + 1 < note.length()
                && Character.isLetter(note.charAt(i - 1))
                && Character.isLetter(note.charAt(i + 1));
    }

    String text() {
        return text;
    }

    /** Returns the index in the note of a kept character. */
    int originOf(int index) {
        return origin == null ? index : origin[index];
    }

    /** Returns the index in the note just behind the piece that ends at {@code end} here. */
    int originOfEnd(int end) {
        return origin == null ? end : origin[end - 1] + 1;
    }
}
