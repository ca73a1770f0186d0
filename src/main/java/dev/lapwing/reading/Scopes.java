package dev.lapwing.reading;

import dev.lapwing.reading.Signal.Standing;
import java.util.List;

/**
 * Marks what is denied, supposed, conditional, past or nearly so, after NegEx (Chapman et al. 2001) and ConText
 * (Harkema et al. 2009): a trigger reaches forward to a termination term, another negation or the end of the sentence;
 * a trigger that stands behind reaches back five words; a pseudo-trigger is passed over. Since here a wrong "denied" is
 * worse than a wrong "said", the reach is cut further: at a comma that opens no list, after {@link Reach#WORDS} words, and
 * a denial of damage does not go on to deny the contact that is named after it.
 */
final class Scopes {
    static final long TRIGGERS = Sign.bits(
            Sign.NOT,
            Sign.NOT_AFTER,
            Sign.NOT_REALLY,
            Sign.NEAR_MISS,
            Sign.AVOIDED,
            Sign.MAYBE,
            Sign.IF,
            Sign.IF_NOT_REALLY,
            Sign.PAST,
            Sign.PAST_AROUND,
            Sign.PAST_NOT_REALLY);

    private static final int REACH = Reach.WORDS;
    private static final int REACH_BACK = 5;
    private static final long ENDS_DENIAL = Sign.bits(Sign.END, Sign.NOT, Sign.NOT_REALLY, Sign.NOT_AFTER);
    private static final long ENDS_CONDITION = Sign.bits(Sign.END, Sign.END_IF);
    private static final long ENDS_PAST = Sign.bits(Sign.END, Sign.END_PAST);
    private static final long NARROW = Sign.bits(Sign.TIGHT, Sign.PASSAGE, Sign.TOUCH);
    private static final long HARM = Sign.bits(Sign.DAMAGE, Sign.WEAR);

    private final Tokens tokens;
    private final List<Signal> signals;
    private final Layout layout;
    private final Reach reach;

    Scopes(Tokens tokens, List<Signal> signals, Layout layout) {
        this.tokens = tokens;
        this.signals = signals;
        this.layout = layout;
        this.reach = new Reach(tokens);
    }

    void mark() {
        Questions.suppose(tokens, signals);
        for (int i = 0; i < signals.size(); i++) {
            Signal trigger = signals.get(i);
            if (trigger.is(Sign.NOT) && !undoes(i)) {
                forward(i, Standing.DENIED, ENDS_DENIAL, true);
                denyVerbBefore(i);
            }
            if (trigger.is(Sign.NEAR_MISS)) {
                forward(i, Standing.NEARLY, ENDS_DENIAL, true);
            }
            if (trigger.is(Sign.AVOIDED)) {
                avoid(i);
            }
            if (trigger.is(Sign.NOT_AFTER)) {
                back(i);
            }
            if (trigger.is(Sign.IF)) {
                forward(i, Standing.CONDITIONAL, ENDS_CONDITION, false);
            }
            if (trigger.is(Sign.PAST) && !isOldThing(i)) {
                forward(i, Standing.PAST, ENDS_PAST, false);
            }
            if (trigger.is(Sign.PAST_AROUND)) {
                around(i, Standing.PAST, false);
            }
            if (trigger.is(Sign.MAYBE)) {
                around(i, Standing.SUPPOSED, true);
            }
        }
    }

    /** "Can't say that we didn't": a denial in the same breath as an earlier one, with nothing that happened between. */
    private boolean undoes(int index) {
        Signal second = signals.get(index);
        for (int i = index - 1; second.is(Sign.NOT_TWICE) && i >= 0; i--) {
            Signal first = signals.get(i);
            boolean apart = layout.clause[first.from] != layout.clause[second.from] || second.from - first.to > REACH;
            if (apart || first.isAny(Things.EVENTS)) {
                return false;
            }
            if (first.is(Sign.NOT)) {
                return second.from - first.to >= 2;
            }
        }
        return false;
    }

    /** "The old bridge", "el puente viejo": the thing is old, not what happened. */
    private boolean isOldThing(int index) {
        Signal trigger = signals.get(index);
        Signal before = index == 0 ? null : signals.get(index - 1);
        Signal after = index + 1 < signals.size() ? signals.get(index + 1) : null;
        return trigger.to - trigger.from == 1
                && (after != null && after.from == trigger.to && after.isAny(Things.ABOVE)
                        || before != null && before.to == trigger.from && before.isAny(Things.ABOVE));
    }

    /** "Hit nothing", "touched no branches": the verb just before the negation is denied with its object. */
    private void denyVerbBefore(int index) {
        Signal trigger = signals.get(index);
        Signal before = index == 0 ? null : signals.get(index - 1);
        Signal after = index + 1 < signals.size() ? signals.get(index + 1) : null;
        boolean harmFollows = after != null && after.isAny(HARM) && after.from - trigger.to < 2;
        if (before != null
                && !harmFollows
                && before.isAny(Sign.bits(Sign.CONTACT, Sign.TOUCH))
                && trigger.from - before.to == 0
                && layout.clause[before.from] == layout.clause[trigger.from]) {
            before.mark(Standing.DENIED, trigger);
        }
    }

    private void forward(int index, Standing standing, long ends, boolean stopsAtComma) {
        Signal trigger = signals.get(index);
        boolean harmDenied = false;
        int limit = reach.after(trigger, stopsAtComma);
        for (int i = index + 1; i < signals.size(); i++) {
            Signal signal = signals.get(i);
            if (signal.from >= limit || signal.isAny(ends)) {
                return;
            }
            if (signal.from < trigger.to) {
                continue;
            }
            boolean spared = harmDenied && !signal.isAny(HARM) && !reach.joined(signals.get(i - 1), signal);
            if (spared) {
                return;
            }
            signal.mark(standing, trigger);
            harmDenied |= standing == Standing.DENIED && signal.isAny(HARM) && !signal.is(Sign.CONTACT);
        }
    }

    private void back(int index) {
        Signal trigger = signals.get(index);
        boolean alone = tokens.breakBefore[trigger.from] != Tokens.NO_BREAK
                && (trigger.to == tokens.size || tokens.breakBefore[trigger.to] == Tokens.STOP);
        for (int i = index - 1; i >= 0; i--) {
            Signal signal = signals.get(i);
            boolean across = layout.clause[signal.from] != layout.clause[trigger.from] && !alone;
            if (trigger.from - signal.to >= REACH_BACK
                    || signal.is(Sign.END)
                    || across
                    || !sameSentence(signal, trigger)) {
                return;
            }
            signal.mark(Standing.DENIED, trigger);
        }
    }

    private void around(int index, Standing standing, boolean clauseOnly) {
        Signal trigger = signals.get(index);
        for (int step = -1; step <= 1; step += 2) {
            for (int i = index + step; i >= 0 && i < signals.size(); i += step) {
                Signal signal = signals.get(i);
                boolean apart = clauseOnly
                        ? Math.abs(layout.clause[signal.from] - layout.clause[trigger.from]) > 0
                        : !sameSentence(signal, trigger);
                if (apart || Math.abs(signal.from - trigger.from) > 2 * REACH) {
                    break;
                }
                signal.mark(standing, trigger);
            }
        }
    }

    /** Takes back narrow places and passages named up to one sentence before or after. */
    private void avoid(int index) {
        Signal trigger = signals.get(index);
        for (int step = -1; step <= 1; step += 2) {
            for (int i = index + step; i >= 0 && i < signals.size(); i += step) {
                Signal signal = signals.get(i);
                if (Math.abs(layout.sentence[signal.from] - layout.sentence[trigger.from]) > 1
                        || Math.abs(signal.from - trigger.from) > 3 * REACH) {
                    break;
                }
                if (signal.isAny(NARROW)) {
                    signal.mark(Standing.NEARLY, trigger);
                }
            }
        }
    }

    private boolean sameSentence(Signal a, Signal b) {
        return layout.sentence[a.from] == layout.sentence[b.from];
    }
}
