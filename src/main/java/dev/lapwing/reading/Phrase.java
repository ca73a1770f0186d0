package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A node in a language's tree of phrases: what the words so far mean, and which words may follow. */
final class Phrase {
    private Map<Word, Phrase> next;
    /** Bits of the signs of the phrase that ends here; 0 when none ends here. */
    long signs;
    /** Patterns that begin with the word of this node. */
    List<Pattern> patterns = List.of();

    Phrase next(Word word) {
        return next == null || word == null ? null : next.get(word);
    }

    Phrase extend(Word word) {
        if (next == null) {
            next = new HashMap<>(4);
        }
        return next.computeIfAbsent(word, w -> new Phrase());
    }

    void begin(Pattern pattern) {
        List<Pattern> more = new ArrayList<>(patterns);
        more.add(pattern);
        patterns = more;
    }
}
