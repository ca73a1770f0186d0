package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** Looks up the meanings of the words of a note; what was found out once is kept. */
final class Meanings {
    private static final int LEAST_BORROWED = 4;
    private static final int MOST_KEPT = 20_000;

    private final Concepts concepts;
    /** Meanings per language and listed word. */
    private final int[][][] listed;
    /** The same for forms no lexicon lists; bounded, so that odd input cannot fill it. */
    private final List<Map<String, int[]>> unlisted = new ArrayList<>();

    Meanings(Concepts concepts, Vocabulary vocabulary) {
        this.concepts = concepts;
        this.listed = new int[vocabulary.languages()][vocabulary.size()][];
        for (int l = 0; l < listed.length; l++) {
            int language = l;
            unlisted.add(new ConcurrentHashMap<>());
            vocabulary.forEachWord(
                    word -> listed[language][word.number] = of(language, word.form, word.in(language) ? word : null));
        }
    }

    /** Returns how many meanings there are. */
    int count() {
        return concepts.count();
    }

    /** Returns the numbers of the meanings that a token has when its note is read in a language. */
    int[] at(Tokens tokens, int language, int i) {
        String typed = tokens.unlisted[i];
        if (typed == null) {
            Word word = tokens.anyWord(i);
            return word == null ? Concepts.NONE : listed[language][word.number];
        }
        Map<String, int[]> kept = unlisted.get(language);
        int[] found = kept.get(typed);
        if (found == null) {
            found = of(language, typed, tokens.words[language][i]);
            if (kept.size() < MOST_KEPT) {
                kept.put(typed, found);
            }
        }
        return found;
    }

    /** As typed, else as meant, else as a word borrowed from another language. */
    private int[] of(int language, String typed, Word meant) {
        int[] found = concepts.of(language, typed);
        if (found.length == 0 && meant != null) {
            found = concepts.of(language, meant.form);
        }
        for (int other = 0; found.length == 0 && meant == null && other < concepts.languages(); other++) {
            found = typed.length() < LEAST_BORROWED ? Concepts.NONE : concepts.asListed(other, typed);
        }
        return found;
    }
}
