package dev.lapwing.use.domain;

import java.time.LocalDate;

/** Derives the use pattern of a unit from its rental log. */
public final class PatternJudge {
    private final PatternThresholds thresholds;

    public PatternJudge(PatternThresholds thresholds) {
        this.thresholds = thresholds;
    }

    /**
     * Judges the days before today.
     *
     * @param previous the last judgement, null if there was none; near a border the unit stays what it was
     */
    public UseInForce judge(RentalLog log, LocalDate today, UseInForce previous) {
        LocalDate firstDay = log.firstDay();
        LocalDate earliest = today.minusDays(thresholds.trailingDays());
        LocalDate from = firstDay == null || firstDay.isBefore(earliest) ? earliest : firstDay;
        long known = firstDay == null ? 0 : Math.max(0, today.toEpochDay() - from.toEpochDay());
        if (known < thresholds.knownDays()) {
            String why =
                    known + (known == 1 ? " day" : " days") + " of rental log, " + thresholds.knownDays() + " needed";
            return inForce(UsePattern.UNKNOWN, why, today, previous);
        }
        Tally tally = Tally.of(log.days(from, today.minusDays(1)));
        return inForce(pattern(tally, previous), tally.why(), today, previous);
    }

    private UsePattern pattern(Tally tally, UseInForce previous) {
        boolean idleLong = tally.longestStore() >= thresholds.seasonalStoreDays();
        if (idleLong && tally.shareOut() <= thresholds.seasonalShareOut()) {
            return UsePattern.SEASONAL;
        }
        boolean idleShort = tally.longestStore() < thresholds.fullTimeStoreDays();
        if (idleShort || tally.shareOut() > thresholds.fullTimeShareOut()) {
            return UsePattern.FULL_TIME;
        }
        return previous == null ? UsePattern.FULL_TIME : previous.pattern().caredForAs();
    }

    private static UseInForce inForce(UsePattern pattern, String why, LocalDate today, UseInForce previous) {
        boolean first = previous == null;
        boolean sameCare = !first && previous.pattern().caredForAs() == pattern.caredForAs();
        LocalDate since = first ? null : sameCare ? previous.since() : today;
        return new UseInForce(pattern, since, why);
    }

    /** Days counted; days in the workshop say nothing about use: they neither count nor end a store period. */
    private record Tally(int out, int judged, int longestStore) {
        static Tally of(DayUse[] days) {
            int out = 0;
            int judged = 0;
            int store = 0;
            int longest = 0;
            for (DayUse day : days) {
                if (day == DayUse.WORKSHOP) {
                    continue;
                }
                judged++;
                boolean isOut = day == DayUse.OUT;
                out += isOut ? 1 : 0;
                store = isOut ? 0 : store + 1;
                longest = Math.max(longest, store);
            }
            return new Tally(out, judged, longest);
        }

        /** Returns the share of days out; a unit that was only in the workshop counts as out, the safer reading. */
        double shareOut() {
            return judged == 0 ? 1 : (double) out / judged;
        }

        String why() {
            return "out " + out + " of " + judged + " days, longest store period " + longestStore + " days";
        }
    }
}
