package dev.lapwing.reading;

import java.util.List;

/** What stands around an event: the nearest thing of each kind, searched in its clause first, then outwards. */
final class Near {
    /** How far, in words, a thing may stand from its event. */
    private static final int REACH = 14;

    private static final int REACH_BACK_ACROSS = 26;
    /** Words that an object such as "something" takes. */
    private static final int OBJECT = 2;

    private static final Sign[] SIGNS = Sign.values();

    private final Signal event;
    private final boolean endsClause;
    private final Signal[] nearest = new Signal[SIGNS.length];
    private long signs;
    private Signal object;
    private boolean borrowed;

    private Near(Signal event, Layout layout) {
        this.event = event;
        int behind = Math.min(layout.clause.length, event.to + OBJECT);
        this.endsClause = behind == layout.clause.length || layout.clause[behind] != layout.clause[event.from];
    }

    static Near of(int index, List<Signal> signals, Layout layout) {
        Near near = new Near(signals.get(index), layout);
        near.gather(index, signals, layout, 0);
        for (int across = 1; across <= 2 && !near.has(Things.SETTLING); across++) {
            near.gather(index, signals, layout, across);
            near.borrowed = true;
        }
        if (!near.has(Things.DECIDING)) {
            near.gatherFromSentenceBefore(index, signals, layout);
        }
        return near;
    }

    private void gather(int index, List<Signal> signals, Layout layout, int clausesAway) {
        for (int i = index - 1; i >= 0 && within(signals.get(i), layout, clausesAway); i--) {
            take(signals.get(i));
        }
        for (int i = index + 1; i < signals.size() && within(signals.get(i), layout, clausesAway); i++) {
            Signal signal = signals.get(i);
            if (object == null && signal.isAny(Things.DECIDING) && signal.from >= event.to) {
                object = signal;
            }
            take(signal);
        }
        take(event);
    }

    private boolean within(Signal signal, Layout layout, int clausesAway) {
        return Math.abs(layout.clause[signal.from] - layout.clause[event.from]) <= clausesAway
                && layout.sentence[signal.from] == layout.sentence[event.from]
                && Math.abs(signal.from - event.from) <= REACH;
    }

    private void gatherFromSentenceBefore(int index, List<Signal> signals, Layout layout) {
        for (int i = index - 1; i >= 0; i--) {
            Signal signal = signals.get(i);
            if (layout.sentence[event.from] - layout.sentence[signal.from] > 1
                    || event.from - signal.from > REACH_BACK_ACROSS) {
                return;
            }
            take(signal);
            borrowed = true;
        }
    }

    private void take(Signal signal) {
        if (signal.standing() == Signal.Standing.DENIED && event.standing() != Signal.Standing.DENIED) {
            return;
        }
        signs |= signal.signs;
        for (long bits = signal.signs; bits != 0; bits &= bits - 1) {
            int sign = Long.numberOfTrailingZeros(bits);
            if (nearest[sign] == null || distance(signal) < distance(nearest[sign])) {
                nearest[sign] = signal;
            }
        }
    }

    private int distance(Signal signal) {
        return signal.from >= event.to ? signal.from - event.to : event.from - signal.to;
    }

    /** Returns whether the clause ends with the event, or one word after it: "hit something". */
    boolean endsClause() {
        return endsClause;
    }

    boolean has(long bits) {
        return (signs & bits) != 0;
    }

    boolean has(Sign sign) {
        return has(sign.bit());
    }

    /** Returns the nearest signal with a sign, or null. */
    Signal nearest(Sign sign) {
        return nearest[sign.ordinal()];
    }

    /** Returns the nearest of several kinds of thing, or null. */
    Signal nearestOf(Sign... kinds) {
        Signal best = null;
        for (Sign kind : kinds) {
            Signal candidate = nearest(kind);
            if (candidate != null && (best == null || distance(candidate) < distance(best))) {
                best = candidate;
            }
        }
        return best;
    }

    /** Returns how many words lie between the event and a thing near it. */
    int wordsTo(Signal signal) {
        return Math.max(0, distance(signal));
    }

    /** Returns the first thing named after the event, or null. */
    Signal object() {
        return object;
    }

    /** Returns whether the things come from a neighbouring clause or sentence. */
    boolean borrowed() {
        return borrowed;
    }
}
