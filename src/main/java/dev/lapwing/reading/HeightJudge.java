package dev.lapwing.reading;

import java.util.List;

/** Compares the height limits that a note names with the travel height of the unit. */
final class HeightJudge {
    private static final double DROVE_UNDER = 0.7;
    private static final double NAMED = 0.4;
    /** A height this close to the unit's own is taken for a mention of the unit itself. */
    private static final double OWN = 0.02;

    private static final int UNIT_REACH = 4;
    private static final long PASSED = Things.ABOVE | Sign.PASSAGE.bit();

    private final Layout layout;
    private final List<Signal> signals;
    private final List<Height> heights;

    HeightJudge(List<Height> heights, List<Signal> signals, Layout layout) {
        this.heights = heights;
        this.signals = signals;
        this.layout = layout;
    }

    /** Weighs each height that is below the unit's; without a known travel height, the unit's own as the note names it. */
    void judge(Double travelHeight, Judgement judgement) {
        double own = travelHeight == null ? ownHeight() : travelHeight;
        for (Height height : heights) {
            if (height.metres() < own - OWN) {
                judgement.add(weigh(height, travelHeight == null));
            } else if (own > 0) {
                clear(height);
                judgement.limitIsHighEnough();
            }
        }
    }

    /** A limit that is high enough takes back the passage under it. */
    private void clear(Height height) {
        for (Signal signal : signals) {
            boolean here = layout.sentence[signal.from] == layout.sentence[height.from()];
            if (here && signal.isAny(PASSED)) {
                signal.mark(Signal.Standing.NEARLY, null);
            }
        }
    }

    /**
     * Returns the greatest height named together with the unit; where none is, and one of two heights is named together
     * with something overhead, the other one; else 0, when there is none to compare with another.
     */
    private double ownHeight() {
        double own = 0;
        int limits = 0;
        double other = 0;
        for (Height height : heights) {
            boolean ofUnit = heights.size() > 1 && named(height, Sign.UNIT.bit());
            own = ofUnit ? Math.max(own, height.metres()) : own;
            boolean limit = named(height, Things.ABOVE);
            limits += limit ? 1 : 0;
            other = limit ? other : height.metres();
        }
        boolean oneOfTwo = own == 0 && heights.size() == 2 && limits == 1;
        return oneOfTwo ? other : own;
    }

    private boolean named(Height height, long bits) {
        return signals.stream()
                .anyMatch(signal -> signal.isAny(bits)
                        && layout.clause[signal.from] == layout.clause[height.from()]
                        && distance(signal, height) <= UNIT_REACH);
    }

    private Finding weigh(Height height, boolean compared) {
        Signal limit = new Signal(Sign.OVERHEAD.bit(), height.from(), height.to());
        Signal passage = near(height, Sign.PASSAGE.bit());
        Signal above = near(height, Things.ABOVE);
        Signal avoided = near(height, Sign.bits(Sign.NEAR_MISS, Sign.AVOIDED));
        if (avoided != null || passage != null && !passage.stands()) {
            return Finding.NONE;
        }
        if (passage != null) {
            return new Finding(Sentence.TOO_LOW, DROVE_UNDER, passage, limit, List.of(limit, passage));
        }
        if (compared) {
            return new Finding(Sentence.TOO_LOW, DROVE_UNDER, limit, limit, List.of(limit));
        }
        return above == null
                ? Finding.NONE
                : new Finding(Sentence.OPEN_HEIGHT, NAMED, limit, limit, List.of(limit, above));
    }

    private Signal near(Height height, long bits) {
        Signal best = null;
        int sentence = layout.sentence[height.from()];
        for (Signal signal : signals) {
            if (signal.isAny(bits) && Math.abs(layout.sentence[signal.from] - sentence) <= 1) {
                boolean closer = best == null || distance(signal, height) < distance(best, height);
                best = closer ? signal : best;
            }
        }
        return best;
    }

    private static int distance(Signal signal, Height height) {
        return Math.abs(signal.from - height.from());
    }
}
