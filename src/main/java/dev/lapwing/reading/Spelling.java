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

    /**
     * Writes the word meant by the typed form into {@code tokens.words[language][at]} for each language that knows it; returns whether it is
     * listed as typed.
     */
    boolean resolve(char[] typed, int length, Tokens tokens, int at) {
        Word[][] words = tokens.words;
        Word listed = vocabulary.listed(typed, length);
        if (listed != null) {
            for (int l = 0; l < words.length; l++) {
                words[l][at] = listed.in(l) ? listed : null;
            }
        } else if (length >= 2 && length <= LanguageForms.LONGEST && lettersOnly(typed, length)) {
            tokens.unlisted[at] = new String(typed, 0, length);
            Word[] guess = guess(tokens.unlisted[at]);
            for (int l = 0; l < words.length; l++) {
                words[l][at] = guess[l];
            }
        }
        return listed != null;
    }

    private static boolean lettersOnly(char[] typed, int length) {
        for (int i = 0; i < length; i++) {
            if (typed[i] < 'a' || typed[i] > 'z') {
                return false;
            }
        }
        return true;
    }

    private Word[] guess(String typed) {
        Word[] guess = vocabulary.guessed(typed);
        if (guess == null) {
            guess = guessAnew(Stretching.removedFrom(typed));
            vocabulary.keepGuess(typed, guess);
        }
        return guess;
    }

    private Word[] guessAnew(String form) {
        Word[] guess = new Word[vocabulary.languages()];
        Word listed = vocabulary.listed(form);
        for (int l = 0; l < guess.length; l++) {
            guess[l] = listed == null ? guess(form, l) : listed.in(l) ? listed : null;
        }
        return guess;
    }

    private Word guess(String form, int language) {
        LanguageForms forms = vocabulary.forms(language);
        boolean longEnough = form.length() >= LanguageForms.SHORTEST_WITH_SLIP - 1;
        Word word = longEnough ? forms.byStem(stemmer(language), form) : null;
        if (word == null && !LanguageForms.hasVowel(form)) {
            word = forms.byConsonants(LanguageForms.consonants(form));
        }
        return word == null && longEnough ? forms.bySlip(form) : word;
    }

    private SnowballStemmer stemmer(int language) {
        if (stemmers[language] == null) {
            stemmers[language] = vocabulary.forms(language).stemmer();
        }
        return stemmers[language];
    }
}
