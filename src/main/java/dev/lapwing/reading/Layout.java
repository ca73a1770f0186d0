package dev.lapwing.reading;

import java.util.List;

/** Which clause and which sentence each token of a note stands in, counted from 0. */
final class Layout {
    final int[] clause;
    final int[] sentence;

    Layout(Tokens tokens, List<Signal> signals) {
        clause = new int[tokens.size];
        sentence = new int[tokens.size];
        boolean[] opens = new boolean[tokens.size];
        for (Signal signal : signals) {
            if (signal.is(Sign.CLAUSE) || signal.is(Sign.END)) {
                opens[signal.from] = true;
            }
        }
        for (int i = 1; i < tokens.size; i++) {
            byte breakBefore = tokens.breakBefore[i];
            clause[i] = clause[i - 1] + (breakBefore != Tokens.NO_BREAK || opens[i] ? 1 : 0);
            sentence[i] = sentence[i - 1] + (breakBefore == Tokens.STOP ? 1 : 0);
        }
    }
}
