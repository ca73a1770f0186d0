package dev.lapwing.jobs.domain.verdict;

import java.util.Optional;

/**
 * What one rule leads to.
 *
 * @param work null when nothing is to be done
 * @param hold whether the unit must not be rented before the work is done and signed
 * @param urgency how soon the work is wanted
 * @param whenPressed how soon it is wanted when rain is near or the unit goes out; never later than {@code urgency}
 */
record Consequence(Verdict verdict, Work work, boolean hold, Urgency urgency, Urgency whenPressed) {
    Consequence {
        if (whenPressed.compareTo(urgency) < 0) {
            throw new IllegalArgumentException("rain or a departure must not make work less urgent");
        }
        if (work != null && urgency == Urgency.NONE) {
            throw new IllegalArgumentException("work has an urgency");
        }
        if (verdict == Verdict.STOP_AND_REFER && !hold) {
            throw new IllegalArgumentException("a roof that is referred to a workshop stays on hold");
        }
    }

    static Consequence nothing() {
        return new Consequence(Verdict.FIT, null, false, Urgency.NONE, Urgency.NONE);
    }

    static Consequence routine(Verdict verdict, Work work) {
        return new Consequence(verdict, work, false, Urgency.ROUTINE, Urgency.ROUTINE);
    }

    static Consequence pressing(Verdict verdict, Work work) {
        return new Consequence(verdict, work, false, Urgency.ROUTINE, Urgency.URGENT);
    }

    static Consequence hold(Verdict verdict, Work work) {
        return new Consequence(verdict, work, true, Urgency.AT_ONCE, Urgency.AT_ONCE);
    }

    Optional<Work> needed() {
        return Optional.ofNullable(work);
    }

    Urgency urgency(boolean pressed) {
        return pressed ? whenPressed : urgency;
    }

    /** Returns this consequence with a worse verdict; sealant work grows with it, referral brings the hold. */
    Consequence withVerdict(Verdict worse) {
        Work grown = work == null || work.isSealantRun() || worse == Verdict.STOP_AND_REFER ? workFor(worse) : work;
        Urgency least = grown == null ? Urgency.NONE : Urgency.ROUTINE;
        Consequence same = new Consequence(
                worse,
                grown,
                hold || worse == Verdict.STOP_AND_REFER,
                urgency.sooner(least),
                whenPressed.sooner(least));
        return worse == Verdict.STOP_AND_REFER ? same.withUrgency(Urgency.AT_ONCE) : same;
    }

    Consequence withHold() {
        return new Consequence(verdict, work, true, urgency, whenPressed);
    }

    Consequence withUrgency(Urgency sooner) {
        return new Consequence(verdict, work, hold, urgency.sooner(sooner), whenPressed.sooner(sooner));
    }

    private static Work workFor(Verdict verdict) {
        return switch (verdict) {
            case FIT -> null;
            case TOUCH_UP -> Work.TOUCH_UP;
            case REWORK -> Work.REWORK;
            case REPLACE -> Work.SEALANT_REPLACEMENT;
            case STOP_AND_REFER -> Work.WORKSHOP_REFERRAL;
        };
    }
}
