package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;

/**
 * Weighs one event with the things near it: who touched what. The weights are settings found on the development notes;
 * only their order and their standing to the two thresholds matter.
 */
final class EventJudge {
    private static final double CERTAIN = 0.95;
    private static final double STRONG = 0.85;
    private static final double LIKELY = 0.7;
    private static final double OPEN = 0.45;
    private static final double WEAK = 0.35;
    private static final double FAINT = 0.1;
    private static final int OBJECT_REACH = 5;
    private static final int TOUCH_REACH = 2;
    private static final int BESIDE = 1;
    private static final Sign[] MARKED = {
        Sign.OVERHEAD, Sign.TALL, Sign.ROOF, Sign.DROPPING, Sign.LOW, Sign.BELOW, Sign.OTHER
    };

    private final Signal event;
    private final Near near;

    EventJudge(Signal event, Near near) {
        this.event = event;
        this.near = near;
    }

    /** Returns the strongest reading of the event, as if it were said outright. */
    Finding judge() {
        Finding best = Finding.NONE;
        for (long bits = event.signs & Things.EVENTS; bits != 0; bits &= bits - 1) {
            Finding finding = judgeAs(Sign.ofLowestBit(bits));
            if (finding.weight() > best.weight() || best == Finding.NONE) {
                best = finding;
            }
        }
        return best.event() == null ? best : best.with(signalsNear());
    }

    private Finding judgeAs(Sign sign) {
        if (elsewhere()) {
            return finding(Sentence.BELOW_ROOF, 0, near.nearest(Sign.ELSEWHERE));
        }
        return switch (sign) {
            case CONTACT -> contact();
            case TOUCH -> touch();
            case STUCK -> stuck();
            case FALL -> fall();
            case DAMAGE -> damage();
            case WEAR -> wear();
            case DEBRIS -> debris();
            case TRACE -> trace();
            case NOISE -> noise();
            case STRIKE -> finding(Sentence.CONTACT_SAID, STRONG, thing());
            case HINT, TIGHT -> hint();
            default -> finding(Sentence.OPEN_CONTACT, OPEN, thing());
        };
    }

    /** Tells whether what happened, happened to somebody or something else. */
    private boolean elsewhere() {
        Signal other = near.nearest(Sign.ELSEWHERE);
        boolean cameDown = event.is(Sign.FALL) && near.has(Sign.ROOF);
        Signal unit = near.nearest(Sign.UNIT);
        boolean toUs = unit != null && other != null && unit.from >= other.to && near.wordsTo(unit) <= TOUCH_REACH;
        return belonging()
                || other != null
                        && !cameDown
                        && !toUs
                        && !near.borrowed()
                        && (other.from < event.from || near.object() == null || other.from <= near.object().from);
    }

    /** "My hat caught on a branch", "it caught my sleeve": a belonging right beside the event, and nothing of the roof. */
    private boolean belonging() {
        Signal thing = near.nearest(Sign.BELONGING);
        Signal unit = near.nearest(Sign.UNIT);
        return thing != null
                && !near.has(Sign.ROOF)
                && near.wordsTo(thing) <= BESIDE
                && (thing.from > event.from || unit == null || unit.from < thing.from || unit.from > event.from);
    }

    private Signal thing() {
        return near.nearestOf(Sign.OVERHEAD, Sign.ROOF, Sign.TALL, Sign.DROPPING);
    }

    private Finding contact() {
        Signal object = near.object();
        boolean groundObject = object != null && object.is(Sign.OTHER) && near.wordsTo(object) <= OBJECT_REACH;
        if (near.has(Sign.ROOF)) {
            return finding(Sentence.CONTACT_WITH_ROOF, near.borrowed() ? LIKELY : CERTAIN, near.nearest(Sign.ROOF));
        }
        if (near.has(Sign.BELOW) || groundObject || otherActs()) {
            return below();
        }
        if (near.has(Sign.OVERHEAD)) {
            return finding(
                    Sentence.CONTACT_WITH_OVERHEAD, near.borrowed() ? LIKELY : STRONG, near.nearest(Sign.OVERHEAD));
        }
        if (near.has(Sign.OTHER)) {
            return below();
        }
        if (near.has(Sign.TALL)) {
            boolean low = near.has(Sign.LOW);
            return finding(
                    low ? Sentence.CONTACT_WITH_OVERHEAD : Sentence.OPEN_CONTACT,
                    low ? STRONG : OPEN,
                    near.nearest(Sign.TALL));
        }
        if (near.has(Sign.DROPPING)) {
            return finding(Sentence.CAME_DOWN, LIKELY, near.nearest(Sign.DROPPING));
        }
        return near.has(Sign.LOW)
                ? finding(Sentence.CONTACT_SAID, LIKELY, near.nearest(Sign.LOW))
                : finding(Sentence.OPEN_CONTACT, near.endsClause() ? WEAK : FAINT, null);
    }

    /** "A truck hit the bridge": something of the ground is the one that acts. */
    private boolean otherActs() {
        Signal other = near.nearest(Sign.OTHER);
        Signal unit = near.nearest(Sign.UNIT);
        return other != null
                && other.to <= event.from
                && event.from - other.to <= TOUCH_REACH
                && (unit == null || near.wordsTo(unit) > TOUCH_REACH);
    }

    private Finding touch() {
        Signal overhead = near.nearestOf(Sign.OVERHEAD, Sign.TALL);
        if (near.borrowed() || overhead == null || near.has(Sign.BELOW)) {
            return Finding.NONE;
        }
        if (near.has(Sign.ROOF)) {
            return finding(Sentence.CONTACT_WITH_OVERHEAD, STRONG, overhead);
        }
        boolean close = near.object() == overhead && near.wordsTo(overhead) <= TOUCH_REACH;
        return close && overhead.is(Sign.OVERHEAD)
                ? finding(Sentence.CONTACT_WITH_OVERHEAD, LIKELY, overhead)
                : Finding.NONE;
    }

    private Finding stuck() {
        Signal above = otherActs() ? null : near.nearest(Sign.OVERHEAD);
        if (above != null && !near.has(Sign.BELOW)) {
            return finding(Sentence.CONTACT_WITH_OVERHEAD, near.borrowed() ? OPEN : LIKELY, above);
        }
        if (near.has(Sign.ROOF) && near.has(Things.FALLING)) {
            return finding(Sentence.CONTACT_WITH_ROOF, LIKELY, near.nearest(Sign.ROOF));
        }
        return near.has(Sign.TALL) && !near.has(Sign.BELOW)
                ? finding(Sentence.OPEN_CONTACT, OPEN, near.nearest(Sign.TALL))
                : Finding.NONE;
    }

    private Finding fall() {
        Signal fallen = near.nearestOf(Sign.OVERHEAD, Sign.TALL, Sign.DROPPING, Sign.DEBRIS);
        if (near.has(Sign.ROOF)) {
            return finding(Sentence.CAME_DOWN, fallen == null ? LIKELY : CERTAIN, near.nearest(Sign.ROOF));
        }
        if (fallen == null || near.has(Sign.BELOW) || near.has(Sign.OTHER)) {
            return Finding.NONE;
        }
        return near.has(Sign.UNIT) || near.has(Sign.LOW)
                ? finding(Sentence.CAME_DOWN, LIKELY, fallen)
                : finding(Sentence.OPEN_CONTACT, fallen.is(Sign.DEBRIS) ? 0 : OPEN, fallen);
    }

    private Finding damage() {
        if (near.has(Sign.ROOF) && !belowIsNearer()) {
            return finding(Sentence.ROOF_DAMAGE, LIKELY, near.nearest(Sign.ROOF));
        }
        if (near.has(Sign.BELOW) || near.has(Sign.OTHER)) {
            return below();
        }
        return near.has(Sign.OVERHEAD) && near.has(Sign.UNIT)
                ? finding(Sentence.OPEN_DAMAGE, OPEN, near.nearest(Sign.OVERHEAD))
                : Finding.NONE;
    }

    private Finding wear() {
        if (!near.has(Sign.ROOF) || belowIsNearer()) {
            return Finding.NONE;
        }
        return near.has(Things.FALLING)
                ? finding(Sentence.ROOF_DAMAGE, LIKELY, near.nearest(Sign.ROOF))
                : finding(Sentence.OPEN_DAMAGE, OPEN, near.nearest(Sign.ROOF));
    }

    private Finding debris() {
        boolean held = near.has(Sign.ROOF) && near.has(Sign.bits(Sign.STUCK, Sign.DAMAGE));
        return held ? finding(Sentence.ROOF_DAMAGE, LIKELY, near.nearest(Sign.ROOF)) : Finding.NONE;
    }

    private Finding trace() {
        return near.has(Sign.ROOF) && !belowIsNearer()
                ? finding(Sentence.ROOF_DAMAGE, LIKELY, near.nearest(Sign.ROOF))
                : Finding.NONE;
    }

    private Finding noise() {
        Signal thing = near.nearestOf(Sign.ROOF, Sign.OVERHEAD, Sign.TALL, Sign.LOW);
        boolean above = near.has(Things.ABOVE) || near.has(Sign.LOW);
        return thing == null || near.has(Sign.BELOW)
                ? Finding.NONE
                : finding(Sentence.OPEN_SOUND, above ? OPEN : WEAK, thing);
    }

    private Finding hint() {
        Signal thing = near.nearestOf(Sign.OVERHEAD, Sign.ROOF, Sign.TALL);
        return thing == null
                ? finding(Sentence.OPEN_CONTACT, WEAK, null)
                : finding(Sentence.CONTACT_SAID, LIKELY, thing);
    }

    private boolean belowIsNearer() {
        Signal below = near.nearestOf(Sign.BELOW, Sign.OTHER);
        return below != null && near.wordsTo(below) < near.wordsTo(near.nearest(Sign.ROOF));
    }

    private Finding below() {
        return finding(Sentence.BELOW_ROOF, 0, near.nearestOf(Sign.BELOW, Sign.OTHER));
    }

    private Finding finding(Sentence sentence, double weight, Signal thing) {
        return new Finding(sentence, weight, event, thing, List.of());
    }

    private List<Signal> signalsNear() {
        List<Signal> signals = new ArrayList<>(MARKED.length + 1);
        signals.add(event);
        for (Sign sign : MARKED) {
            Signal signal = near.nearest(sign);
            if (signal != null && signal != event) {
                signals.add(signal);
            }
        }
        return signals;
    }
}
