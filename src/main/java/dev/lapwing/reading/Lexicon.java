package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;

/** What one language brings to reading besides its words: patterns that begin with a sign, and sentences. */
final class Lexicon {
    private final LexiconFile file;
    private final List<List<Pattern>> bySign = new ArrayList<>();

    Lexicon(LexiconFile file) {
        this.file = file;
        for (int i = 0; i < Sign.values().length; i++) {
            bySign.add(new ArrayList<>());
        }
    }

    void add(Pattern pattern, int language) {
        Pattern.Part first = pattern.parts().get(0);
        for (Sign sign : Sign.values()) {
            if ((first.signs() & sign.bit()) != 0) {
                bySign.get(sign.ordinal()).add(pattern);
            }
        }
        for (Word word : first.words()) {
            if (word.phrases[language] == null) {
                word.phrases[language] = new Phrase();
            }
            word.phrases[language].begin(pattern);
        }
    }

    String language() {
        return file.language();
    }

    List<Pattern> beginningWith(int signOrdinal) {
        return bySign.get(signOrdinal);
    }

    String sentence(Sentence sentence) {
        return file.sentence(sentence);
    }
}
