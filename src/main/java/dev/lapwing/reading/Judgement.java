package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Gathers the findings of a note, those that stand and those that the words around take back, into one decision. */
final class Judgement {
    private static final double SUPPOSED = 0.45;
    private static final double CONTRAST = 0.62;

    private final List<Finding> standing = new ArrayList<>();
    private final List<Finding> takenBack = new ArrayList<>();
    private boolean highEnough;

    void weigh(List<Signal> signals, Layout layout) {
        for (int i = 0; i < signals.size(); i++) {
            Signal event = signals.get(i);
            if (event.isAny(Things.EVENTS)) {
                add(new EventJudge(event, Near.of(i, signals, layout)).judge());
            }
            if (event.is(Sign.NOT) && i > 0) {
                add(contrast(signals.get(i - 1), event, layout));
            }
        }
    }

    /** "The sign is fine. The vent isn't.": a denial that ends its clause denies the good that was said before. */
    private static Finding contrast(Signal thing, Signal denial, Layout layout) {
        boolean ends = denial.to == layout.clause.length || layout.clause[denial.to] != layout.clause[denial.from];
        boolean fits = thing.isAny(Sign.bits(Sign.ROOF, Sign.OVERHEAD))
                && denial.from - thing.to <= 1
                && layout.sentence[thing.from] == layout.sentence[denial.from]
                && layout.clause[thing.from] > 0
                && denial.to - denial.from == 1;
        return ends && fits
                ? new Finding(Sentence.CONTACT_SAID, CONTRAST, thing, thing, List.of(thing, denial))
                : Finding.NONE;
    }

    void add(Finding finding) {
        if (finding.event() == null) {
            return;
        }
        if (finding.weight() == 0 || !finding.event().stands()) {
            takenBack.add(finding);
        } else if (finding.event().standing() == Signal.Standing.SUPPOSED) {
            double weight = Math.min(SUPPOSED, finding.weight());
            standing.add(
                    new Finding(Sentence.OPEN_CONTACT, weight, finding.event(), finding.thing(), finding.signals()));
        } else {
            standing.add(finding);
        }
    }

    void limitIsHighEnough() {
        highEnough = true;
    }

    /** Returns whether a limit named is higher than the unit, and nothing else found stands. */
    boolean onlyHighEnough() {
        return highEnough && standing.isEmpty();
    }

    /** Returns the finding that decides: the strongest that stands, else the first one taken back. */
    Finding decisive() {
        Finding best = Finding.NONE;
        for (Finding finding : standing) {
            if (finding.weight() > best.weight()) {
                best = finding;
            }
        }
        if (best != Finding.NONE || takenBack.isEmpty()) {
            return best;
        }
        return takenBack.stream()
                .filter(finding -> finding.weight() > 0)
                .findFirst()
                .orElse(takenBack.get(0));
    }

    /** Returns the weight of all that stands; findings of different kinds support each other. */
    double score() {
        Map<Sentence, Double> bestOfKind = new EnumMap<>(Sentence.class);
        for (Finding finding : standing) {
            bestOfKind.merge(finding.sentence(), finding.weight(), Math::max);
        }
        double against = 1;
        for (double weight : bestOfKind.values()) {
            against *= 1 - weight;
        }
        return 1 - against;
    }

    /** Returns whether something stands, and all of it is hedged. */
    boolean onlySupposed() {
        return !standing.isEmpty()
                && standing.stream()
                        .allMatch(f -> f.event().standing() == Signal.Standing.SUPPOSED
                                || f.event().is(Sign.DOUBT));
    }

    List<Finding> standing() {
        return standing;
    }

    List<Finding> takenBack() {
        return takenBack;
    }
}
