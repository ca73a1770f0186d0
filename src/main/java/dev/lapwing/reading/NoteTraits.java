package dev.lapwing.reading;

import java.util.List;
import java.util.function.IntConsumer;

/**
 * Hands over the traits of a note that are made of parts, each once. What stands together is gathered in bit sets first,
 * so that work grows with the note's length however often things are repeated.
 */
final class NoteTraits {
    /** Words that two meanings may stand apart. */
    private static final int NEAR = 4;

    private static final int MOST_SENTENCES = 5;
    private static final long SILENT = Sign.bits(Sign.PLAIN, Sign.CLAUSE);
    private static final long WITH = Things.EVENTS
            | Things.DECIDING
            | Scopes.TRIGGERS
            | Sign.bits(Sign.PASSAGE, Sign.LOW, Sign.UNIT, Sign.ELSEWHERE, Sign.BELONGING, Sign.PERSON);
    private static final int STANDINGS = Signal.Standing.values().length;
    /** Signs that the note claims, and signs that the words around take back. */
    private static final int CLAIMS = 2;

    private final NoteCase noteCase;
    private final Tokens tokens;
    private final Layout layout;
    private final Meanings meanings;
    private final IntConsumer taker;

    private NoteTraits(NoteCase noteCase, Meanings meanings, IntConsumer taker) {
        this.noteCase = noteCase;
        this.tokens = noteCase.tokens();
        this.layout = noteCase.layout();
        this.meanings = meanings;
        this.taker = taker;
    }

    static void of(NoteCase noteCase, Meanings meanings, IntConsumer taker) {
        if (noteCase.tokens().size > 0) {
            NoteTraits traits = new NoteTraits(noteCase, meanings, taker);
            traits.sayings(noteCase.signals());
            traits.repeated(noteCase.signals());
            traits.ideas();
        }
    }

    private void sayings(List<Signal> signals) {
        long[] said = new long[STANDINGS];
        for (Signal signal : signals) {
            said[signal.standing().ordinal()] |= Long.lowestOneBit(signal.signs & ~SILENT);
        }
        for (int standing = 0; standing < STANDINGS; standing++) {
            for (long bits = said[standing]; bits != 0; bits &= bits - 1) {
                taker.accept(Trait.SAID.key(Long.numberOfTrailingZeros(bits) * STANDINGS + standing));
            }
        }
    }

    private void repeated(List<Signal> signals) {
        int lastSentence = layout.sentence[tokens.size - 1];
        long[] once = new long[CLAIMS];
        long[] twice = new long[CLAIMS];
        long[] thrice = new long[CLAIMS];
        long[] first = new long[CLAIMS];
        long[] last = new long[CLAIMS];
        for (Signal signal : signals) {
            int claim = claim(signal);
            thrice[claim] |= twice[claim] & signal.signs;
            twice[claim] |= once[claim] & signal.signs;
            once[claim] |= signal.signs;
            first[claim] |= layout.sentence[signal.from] == 0 ? signal.signs : 0;
            last[claim] |= layout.sentence[signal.from] == lastSentence ? signal.signs : 0;
        }
        claims(Trait.TWICE, twice);
        claims(Trait.THRICE, thrice);
        claims(Trait.FIRST, first);
        claims(Trait.LAST, last);
        taker.accept(Trait.SENTENCES.key(Math.min(MOST_SENTENCES, lastSentence)));
    }

    private static int claim(Signal signal) {
        return signal.stands() ? 0 : 1;
    }

    private void claims(Trait trait, long[] signs) {
        for (int claim = 0; claim < CLAIMS; claim++) {
            for (long bits = signs[claim]; bits != 0; bits &= bits - 1) {
                taker.accept(trait.key(Long.numberOfTrailingZeros(bits) * CLAIMS + claim));
            }
        }
    }

    private void ideas() {
        int[][] ideas = new int[tokens.size][];
        for (int i = 0; i < tokens.size; i++) {
            ideas[i] = meanings.at(tokens, noteCase.language(), i);
        }
        Together together = new Together(ideas, meanings.count());
        long[][] clauses = signsOfClauses();
        for (int i = 0; i < tokens.size; i++) {
            for (int idea : ideas[i]) {
                together.with(idea, clauses[layout.clause[i]]);
                ideasAfter(i, idea, ideas, together);
            }
        }
        together.handOver(taker);
    }

    private void ideasAfter(int i, int idea, int[][] ideas, Together together) {
        int limit = Math.min(tokens.size, i + NEAR + 1);
        for (int j = i + 1; j < limit && tokens.breakBefore[j] != Tokens.STOP; j++) {
            for (int other : ideas[j]) {
                together.before(idea, other);
            }
        }
    }

    private long[][] signsOfClauses() {
        long[][] clauses = new long[layout.clause[tokens.size - 1] + 1][CLAIMS];
        for (Signal signal : noteCase.signals()) {
            clauses[layout.clause[signal.from]][claim(signal)] |= signal.signs & WITH;
        }
        return clauses;
    }
}
