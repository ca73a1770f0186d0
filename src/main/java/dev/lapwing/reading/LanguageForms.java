package dev.lapwing.reading;

import java.util.HashMap;
import java.util.Map;
import org.tartarus.snowball.SnowballStemmer;
import org.tartarus.snowball.ext.EnglishStemmer;
import org.tartarus.snowball.ext.FrenchStemmer;
import org.tartarus.snowball.ext.SpanishStemmer;

/**
 * The ways to know an unlisted form in one language: by its stem, by its consonants when typed without vowels, and by
 * one slip of the finger.
 *
 * <p>A slip is found through shared deletions: two words one edit apart have in common either one of them less a
 * letter, or both less a letter. All deletions of the listed words are kept in a hash table, so a look-up costs one
 * probe per letter of the unknown word, whatever the size of the lexicon.
 */
final class LanguageForms {
    static final int SHORTEST_WITH_SLIP = 5;
    static final int LONGEST = 24;

    private final String language;
    private final Map<String, Word> byStem = new HashMap<>();
    private final Map<String, Word> byConsonants = new HashMap<>();
    private final Map<String, Word> byDeletion = new HashMap<>();

    LanguageForms(String language) {
        this.language = language;
    }

    void learn(Word word, boolean alone) {
        String form = word.form;
        if (alone && form.length() >= 4) {
            byStem.putIfAbsent(stem(stemmer(), form), word);
        }
        String consonants = consonants(form);
        if (consonants.length() >= 3 && form.length() >= 4) {
            byConsonants.putIfAbsent(consonants, word);
        }
        if (form.length() == SHORTEST_WITH_SLIP - 1) {
            byDeletion.putIfAbsent(form, word);
        }
        if (form.length() >= SHORTEST_WITH_SLIP && form.length() <= LONGEST) {
            byDeletion.put(form, word);
            for (int i = 0; i < form.length(); i++) {
                byDeletion.putIfAbsent(without(form, i), word);
            }
        }
    }

    Word byStem(SnowballStemmer stemmer, String form) {
        return byStem.get(stem(stemmer, form));
    }

    Word byConsonants(String consonants) {
        return byConsonants.get(consonants);
    }

    /** Returns the listed word at most one slip (a letter more, less, other, or two changed about) away, or null. */
    Word bySlip(String form) {
        Word found = fitting(form, byDeletion.get(form));
        for (int i = 1; found == null && i < form.length(); i++) {
            found = fitting(form, byDeletion.get(without(form, i)));
        }
        return found;
    }

    private static Word fitting(String form, Word candidate) {
        boolean fits = candidate != null
                && candidate.form.charAt(0) == form.charAt(0)
                && Slip.isOne(form, candidate.form)
                && Math.min(form.length(), candidate.form.length()) >= SHORTEST_WITH_SLIP - 1;
        return fits ? candidate : null;
    }

    SnowballStemmer stemmer() {
        return switch (language) {
            case "es" -> new SpanishStemmer();
            case "fr" -> new FrenchStemmer();
            default -> new EnglishStemmer();
        };
    }

    private static String stem(SnowballStemmer stemmer, String form) {
        stemmer.setCurrent(form);
        stemmer.stem();
        return stemmer.getCurrent();
    }

    static boolean hasVowel(String form) {
        for (int i = 0; i < form.length(); i++) {
            if ("aeiou".indexOf(form.charAt(i)) >= 0) {
                return true;
            }
        }
        return false;
    }

    /** Returns a form without vowels, doubled letters taken once. */
    static String consonants(String form) {
        StringBuilder kept = new StringBuilder(form.length());
        for (int i = 0; i < form.length(); i++) {
            char c = form.charAt(i);
            if ("aeiou".indexOf(c) < 0 && (kept.isEmpty() || kept.charAt(kept.length() - 1) != c)) {
                kept.append(c);
            }
        }
        return kept.toString();
    }

    private static String without(String form, int i) {
        return new StringBuilder(form).deleteCharAt(i).toString();
    }
}
