package dev.lapwing.reading;

import java.util.List;

/**
 * A sequence of words and signs that means something as a whole, such as {@code one <roof> fewer}.
 *
 * @param meaning what the whole stands for
 * @param parts its parts in order, at least two
 */
record Pattern(Sign meaning, List<Part> parts) {
    /** Words that may stand between two parts joined by {@code ..}. */
    static final int GAP = 5;

    /** Little words passed over between parts: articles and the like need not be written in a pattern. */
    static final int SLACK = 1;

    /**
     * One part of a pattern.
     *
     * @param words the words that fit, or empty
     * @param signs bits of the signs that fit, or 0
     * @param farBefore whether other words may stand before it
     */
    record Part(List<Word> words, long signs, boolean farBefore) {
        boolean fits(Word word, long signsHere) {
            return (signs & signsHere) != 0 || word != null && words.contains(word);
        }
    }
}
