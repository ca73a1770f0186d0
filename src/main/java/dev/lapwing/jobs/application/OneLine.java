package dev.lapwing.jobs.application;

/** Fits words into one line of a list. */
final class OneLine {
    private OneLine() {}

    /** Returns the words without line breaks and cut to at most {@code most} characters, an ellipsis showing the cut. */
    static String of(String words, int most) {
        String line = words.strip().replaceAll("[\\s\\p{Cntrl}]+", " ");
        if (line.length() <= most) {
            return line;
        }
        int end = Character.isHighSurrogate(line.charAt(most - 2)) ? most - 2 : most - 1;
        return line.substring(0, end) + "…";
    }
}
