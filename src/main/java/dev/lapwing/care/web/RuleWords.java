package dev.lapwing.care.web;

import dev.lapwing.care.domain.CareRule;
import dev.lapwing.care.domain.Conditions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Says in words what a care rule asks for. */
final class RuleWords {
    private RuleWords() {}

    static String of(CareRule rule) {
        if (rule instanceof CareRule.Interval interval) {
            return first(interval.kind().label()) + " every " + interval.every() + " for "
                    + interval.pattern().word()
                    + " units" + conditions(interval.when()) + "; opens " + interval.opensBefore()
                    + " days before, late after " + interval.lateAfter() + " days";
        }
        if (rule instanceof CareRule.Opening opening) {
            return "Wash with inspection on the opening day of the season, or before a first rental up to "
                    + opening.earlyRentalDays() + " days earlier; opens " + opening.opensBefore()
                    + " days before, late after " + opening.lateAfter() + " days";
        }
        if (rule instanceof CareRule.Closing closing) {
            return "Wash with inspection within " + closing.within()
                    + " days after the last return or the closing day; a return counts as the last in the final "
                    + closing.lastReturnDays() + " days of the season; late after " + closing.lateAfter() + " days";
        }
        if (rule instanceof CareRule.Intake intake) {
            return "Inspection before the first rental of a unit new to the fleet or away for more than "
                    + intake.awayLongerThan() + " days, at the latest " + intake.within()
                    + " days after its first day in service";
        }
        CareRule.Event event = (CareRule.Event) rule;
        return first(event.kind().label()) + " " + within(event.within()) + " after: "
                + event.event().word() + conditions(event.when());
    }

    private static String within(Duration span) {
        if (span.isZero()) {
            return "at once";
        }
        long hours = span.toHours();
        return "within " + (hours % 24 == 0 && hours > 24 ? hours / 24 + " days" : hours + " hours");
    }

    private static String conditions(Conditions when) {
        List<String> all = new ArrayList<>();
        if (!when.surfaces().isEmpty()) {
            all.add("with a roof of " + String.join(" or ", when.surfaces()));
        }
        if (when.roofOlderThanYears() > 0) {
            all.add("with a roof older than " + when.roofOlderThanYears() + " years");
        }
        if (when.storedOutside()) {
            all.add("stored outside");
        }
        if (when.underTrees()) {
            all.add("stored under trees");
        }
        return all.isEmpty() ? "" : " " + String.join(", ", all);
    }

    private static String first(String label) {
        return Character.toUpperCase(label.charAt(0)) + label.substring(1);
    }
}
