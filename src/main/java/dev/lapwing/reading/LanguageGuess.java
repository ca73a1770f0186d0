package dev.lapwing.reading;

/** Tells the language of a stretch of a note by counting the words that each lexicon lists. */
final class LanguageGuess {
    /** A word only one language lists counts this much; one that several list counts one. */
    private static final int ALONE = 3;

    private LanguageGuess() {}

    static int[] counts(Tokens tokens, int from, int to) {
        int[] counts = new int[tokens.words.length];
        for (int i = from; i < to; i++) {
            int knowing = 0;
            for (Word[] words : tokens.words) {
                knowing += words[i] == null ? 0 : 1;
            }
            for (int l = 0; knowing > 0 && l < counts.length; l++) {
                if (tokens.words[l][i] != null) {
                    counts[l] += knowing == 1 ? ALONE : 1;
                }
            }
        }
        return counts;
    }

    /** Returns the language with the most words, the first of equals. */
    static int best(int[] counts) {
        int best = 0;
        for (int l = 1; l < counts.length; l++) {
            if (counts[l] > counts[best]) {
                best = l;
            }
        }
        return best;
    }
}
