package dev.lapwing.reading;

import java.util.function.Consumer;

/**
 * Pieces of three to five letters of a word and the word as a whole, its ends marked {@code #}: what words nobody listed
 * have in common with known ones.
 */
final class Grams {
    private static final int SHORTEST = 3;
    private static final int LONGEST = 5;

    private Grams() {}

    /** Hands over every piece of a folded form; a piece that comes twice is handed over twice. */
    static void of(String form, Consumer<String> taker) {
        String marked = '#' + form + '#';
        if (marked.length() > LONGEST) {
            taker.accept(marked);
        }
        for (int length = SHORTEST; length <= LONGEST; length++) {
            for (int from = 0; from + length <= marked.length(); from++) {
                taker.accept(marked.substring(from, from + length));
            }
        }
    }

    /** Returns the form of token i whose pieces count: the word meant, else the form as typed, else null. */
    static String form(Tokens tokens, int language, int i) {
        Word meant = tokens.words[language][i];
        return meant == null ? tokens.unlisted[i] : meant.form;
    }
}
