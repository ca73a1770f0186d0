package dev.lapwing.care.domain;

import java.util.ArrayList;
import java.util.List;

/**
 * The rules in force. {@link RuleCheck} says whether they can be adopted; the engine trusts them.
 *
 * @param intervals interval rules
 * @param opening season opening
 * @param closing season closing
 * @param intake new or long away
 * @param events event rules
 * @param combineDays a full inspection of any origin serves routine work due within so many days after it
 * @param fullTimeAtLeast inspections a full-time unit gets in any 365 days when work is done before it is late
 */
public record CareRules(
        List<CareRule.Interval> intervals,
        CareRule.Opening opening,
        CareRule.Closing closing,
        CareRule.Intake intake,
        List<CareRule.Event> events,
        int combineDays,
        int fullTimeAtLeast) {
    public CareRules {
        intervals = List.copyOf(intervals);
        events = List.copyOf(events);
    }

    /** Returns every rule, in the order of the parts. */
    public List<CareRule> all() {
        var all = new ArrayList<CareRule>(intervals);
        all.add(opening);
        all.add(closing);
        all.add(intake);
        all.addAll(events);
        return List.copyOf(all);
    }
}
