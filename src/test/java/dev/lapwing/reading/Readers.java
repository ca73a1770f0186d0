package dev.lapwing.reading;

import java.nio.file.Path;
import java.util.List;

/** The reader that the shipped lexicons make, loaded once for all tests. */
final class Readers {
    static final Path FOLDER = Path.of("shared/reading");
    static final ContactReader SHIPPED = ContactReaders.load(FOLDER);
    private static final LexiconReader RULES =
            ContactReaders.withoutWeights(FOLDER).reader();

    private Readers() {}

    static ContactVerdict verdict(String note) {
        return SHIPPED.read(note, null, null).verdict();
    }

    /** Returns the signals that the rules find in an English note, with what the words around make of them. */
    static List<Signal> signals(String note) {
        return RULES.study(note, "en", null).signals();
    }

    /** Returns the heights that a note names, as read in a language. */
    static List<Height> heights(String note, String language) {
        NoteCase noteCase = RULES.study(note, language, null);
        return RULES.heights(noteCase.tokens(), noteCase.language());
    }

    /** Returns the standing of the only signal with a sign. */
    static Signal.Standing standing(String note, Sign sign) {
        return signals(note).stream()
                .filter(signal -> signal.is(sign))
                .reduce((first, second) -> second)
                .orElseThrow(() -> new AssertionError("no " + sign + " in: " + note))
                .standing();
    }
}
