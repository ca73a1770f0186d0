package dev.lapwing.reading;

import dev.lapwing.reading.Signal.Standing;
import java.util.List;

/** Marks what stands in a question: it is at most supposed. */
final class Questions {
    private Questions() {}

    static void suppose(Tokens tokens, List<Signal> signals) {
        int from = 0;
        for (int i = 1; i <= tokens.size; i++) {
            if (i == tokens.size || tokens.breakBefore[i] == Tokens.STOP) {
                if (tokens.asksBehind(i - 1)) {
                    suppose(from, i, signals);
                }
                from = i;
            }
        }
    }

    private static void suppose(int from, int to, List<Signal> signals) {
        for (int i = firstAt(from, signals); i < signals.size() && signals.get(i).from < to; i++) {
            signals.get(i).mark(Standing.SUPPOSED, null);
        }
    }

    /** Returns the number of the first signal at or behind a token, by halving. */
    private static int firstAt(int token, List<Signal> signals) {
        int low = 0;
        int high = signals.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (signals.get(middle).from < token) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
