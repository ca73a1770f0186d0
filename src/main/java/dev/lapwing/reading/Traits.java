package dev.lapwing.reading;

import java.util.List;
import java.util.Locale;
import java.util.function.IntConsumer;

/**
 * What the weighing by example looks at in a note, each trait with a number and a name: which signs stand in it and how
 * they are said, which of them stand together in a sentence, what the rules found, how long it is, whether it asks.
 */
final class Traits {
    private static final Sign[] SIGNS = Sign.values();
    private static final int COUNT = SIGNS.length;
    private static final String[] GROUPS = {"said", "supposed", "unreal", "denied"};
    private static final int PAIRS = COUNT * GROUPS.length;
    private static final int CLOSE_PAIRS = PAIRS + COUNT * COUNT;
    private static final int FINDINGS = CLOSE_PAIRS + COUNT * COUNT;
    private static final int SENTENCES = Sentence.values().length;
    private static final int SCORES = FINDINGS + SENTENCES * 2;
    private static final int LENGTHS = SCORES + 11;
    private static final int ASKS = LENGTHS + 12;

    static final int SIZE = ASKS + 1;

    /** Signs that tell nothing by standing next to another. */
    private static final long LONELY =
            Sign.bits(Sign.PLAIN, Sign.CLAUSE, Sign.END, Sign.END_IF, Sign.END_PAST, Sign.UNIT, Sign.FIGURE);

    private Traits() {}

    /** Hands over the number of each trait of a note; a number may come more than once. */
    static void of(NoteCase noteCase, IntConsumer taker) {
        Judgement judgement = noteCase.judgement();
        signs(noteCase.signals(), noteCase.layout(), taker);
        for (Finding finding : judgement.standing()) {
            taker.accept(FINDINGS + finding.sentence().ordinal() * 2);
        }
        for (Finding finding : judgement.takenBack()) {
            taker.accept(FINDINGS + finding.sentence().ordinal() * 2 + 1);
        }
        taker.accept(SCORES + (int) (judgement.score() * 10));
        taker.accept(LENGTHS + Math.min(11, 32 - Integer.numberOfLeadingZeros(noteCase.tokens().size)));
        if (noteCase.tokens().asks()) {
            taker.accept(ASKS);
        }
    }

    private static void signs(List<Signal> signals, Layout layout, IntConsumer taker) {
        int sentence = -1;
        int clause = -1;
        long inSentence = 0;
        long inClause = 0;
        for (Signal signal : signals) {
            if (layout.clause[signal.from] != clause) {
                pairs(inClause, CLOSE_PAIRS, taker);
                inClause = 0;
                clause = layout.clause[signal.from];
            }
            if (layout.sentence[signal.from] != sentence) {
                pairs(inSentence, PAIRS, taker);
                inSentence = 0;
                sentence = layout.sentence[signal.from];
            }
            if (signal.stands()) {
                inSentence |= signal.signs;
                inClause |= signal.signs;
            }
            for (long bits = signal.signs; bits != 0; bits &= bits - 1) {
                taker.accept(Long.numberOfTrailingZeros(bits) * GROUPS.length + group(signal));
            }
        }
        pairs(inClause, CLOSE_PAIRS, taker);
        pairs(inSentence, PAIRS, taker);
    }

    private static int group(Signal signal) {
        return switch (signal.standing()) {
            case SAID -> 0;
            case SUPPOSED -> 1;
            case PAST, CONDITIONAL -> 2;
            case NEARLY, DENIED -> 3;
        };
    }

    private static void pairs(long signs, int base, IntConsumer taker) {
        for (long first = signs & ~LONELY; first != 0; first &= first - 1) {
            int one = Long.numberOfTrailingZeros(first);
            for (long second = first & (first - 1); second != 0; second &= second - 1) {
                taker.accept(base + one * COUNT + Long.numberOfTrailingZeros(second));
            }
        }
    }

    /** Returns the name of a trait, as written in the file of weights. */
    static String name(int trait) {
        if (trait < PAIRS) {
            return SIGNS[trait / GROUPS.length].word() + ' ' + GROUPS[trait % GROUPS.length];
        }
        if (trait < FINDINGS) {
            int pair = trait < CLOSE_PAIRS ? trait - PAIRS : trait - CLOSE_PAIRS;
            String joint = trait < CLOSE_PAIRS ? " with " : " next-to ";
            return SIGNS[pair / COUNT].word() + joint + SIGNS[pair % COUNT].word();
        }
        if (trait < SCORES) {
            int finding = trait - FINDINGS;
            String sentence = Sentence.values()[finding / 2].word();
            return (finding % 2 == 0 ? "found " : "taken-back ") + sentence;
        }
        if (trait < LENGTHS) {
            return String.format(Locale.ROOT, "rules %.1f", (trait - SCORES) / 10.0);
        }
        return trait < ASKS ? "words-up-to " + (1 << (trait - LENGTHS)) : "asks";
    }
}
