package dev.lapwing.reading;

import org.tartarus.snowball.SnowballStemmer;

/** Finds which listed word a typed one stands for, in each language. One object serves one note. */
final class Spelling {
    private final Vocabulary vocabulary;
    private final SnowballStemmer[] stemmers;

    Spelling(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.stemmers = new SnowballStemmer[vocabulary.languages()];
    }

    /** Writes the word meant by the typed form into {@code words[language][at]} for each language that knows it. */
    void resolve(char[] typed, int length, Word[][] words, int at) {
        Word listed = vocabulary.listed(typed, length);
        if (listed != null) {
            for (int l = 0; l < words.length; l++) {
                words[l][at] = listed.in(l) ? listed : null;
            }
            return;
        }
        if (length < 2 || length > LanguageForms.LONGEST || !lettersOnly(typed, length)) {
            return;
        }
        guess(new String(typed, 0, length), words, at);
    }

    private static boolean lettersOnly(char[] typed, int length) {
        for (int i = 0; i < length; i++) {
            if (typed[i] < 'a' || typed[i] > 'z') {
                return false;
            }
        }
        return true;
    }

    private void guess(String typed, Word[][] words, int at) {
        String form = withoutStretching(typed);
        Word listed = vocabulary.listed(form);
        if (listed != null) {
            for (int l = 0; l < words.length; l++) {
                words[l][at] = listed.in(l) ? listed : null;
            }
            return;
        }
        for (int l = 0; l < words.length; l++) {
            words[l][at] = form.length() >= 4 ? vocabulary.forms(l).byStem(stemmer(l), form) : null;
        }
        guessSlip(form, words, at);
    }

    private void guessSlip(String form, Word[][] words, int at) {
        boolean vowelless = !LanguageForms.hasVowel(form);
        for (int l = 0; l < words.length; l++) {
            LanguageForms forms = vocabulary.forms(l);
            Word word = vowelless ? forms.byConsonants(LanguageForms.consonants(form)) : null;
            if (word == null && form.length() >= LanguageForms.SHORTEST_WITH_SLIP - 1) {
                word = forms.bySlip(form);
            }
            if (words[l][at] == null) {
                words[l][at] = word;
            }
        }
    }

    private SnowballStemmer stemmer(int language) {
        if (stemmers[language] == null) {
            stemmers[language] = vocabulary.forms(language).stemmer();
        }
        return stemmers[language];
    }

    /** Takes letters typed three times or more ("noooo") once, and leaves double ones. */
    private static String withoutStretching(String form) {
        StringBuilder kept = null;
        for (int i = 0; i < form.length(); i++) {
            char c = form.charAt(i);
            boolean stretched = i + 2 < form.length() && form.charAt(i + 1) == c && form.charAt(i + 2) == c;
            if (stretched && kept == null) {
                kept = new StringBuilder(form.length()).append(form, 0, i);
            }
            if (kept != null && (kept.isEmpty() || kept.charAt(kept.length() - 1) != c || !inRun(form, i))) {
                kept.append(c);
            }
        }
        return kept == null ? form : kept.toString();
    }

    private static boolean inRun(String form, int i) {
        int from = i;
        int to = i;
        while (from > 0 && form.charAt(from - 1) == form.charAt(i)) {
            from--;
        }
        while (to + 1 < form.length() && form.charAt(to + 1) == form.charAt(i)) {
            to++;
        }
        return to - from >= 2;
    }
}
