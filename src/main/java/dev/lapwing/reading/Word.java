package dev.lapwing.reading;

/** A folded word form known to at least one lexicon; one object per form, so that forms are compared by identity. */
final class Word {
    final String form;
    /** Counts the words of a vocabulary from 0. */
    final int number;
    /** Per language, the tree of phrases that start with this word; null where the form is not listed. */
    final Phrase[] phrases;
    /** Bit per language in which the form is listed. */
    private int languages;

    Word(String form, int number, int languageCount) {
        this.form = form;
        this.number = number;
        this.phrases = new Phrase[languageCount];
    }

    boolean in(int language) {
        return (languages & 1 << language) != 0;
    }

    void addLanguage(int language) {
        languages |= 1 << language;
    }

    @Override
    public String toString() {
        return form;
    }
}
