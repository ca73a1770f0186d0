package dev.lapwing.care.domain;

import dev.lapwing.use.domain.Season;
import dev.lapwing.use.domain.UsePattern;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;

/** Says whether rules can be adopted: whether they leave no unit without a date and keep the facts of the trade. */
public final class RuleCheck {
    private static final int YEAR = 365;

    private final CareRules rules;
    private final List<RuleProblem> problems = new ArrayList<>();

    private RuleCheck(CareRules rules) {
        this.rules = rules;
    }

    /** Returns what is wrong with the rules, each problem in one line; empty when they can be used. */
    public static List<String> problems(CareRules rules) {
        return found(rules).stream().map(RuleProblem::text).toList();
    }

    static List<RuleProblem> found(CareRules rules) {
        var check = new RuleCheck(rules);
        check.names();
        rules.intervals().forEach(check::interval);
        check.everyUnitHasARule();
        check.seasonKeepsItsTwo();
        rules.events().forEach(check::event);
        return List.copyOf(check.problems);
    }

    /** Returns each rule that was changed without counting its version up. */
    public static List<String> unversionedChanges(CareRules adopted, CareRules candidate) {
        Map<String, CareRule> before = new HashMap<>();
        adopted.all().forEach(rule -> before.put(rule.ref().id(), rule));
        var found = new ArrayList<String>();
        for (CareRule rule : candidate.all()) {
            CareRule old = before.get(rule.ref().id());
            if (old != null
                    && !old.equals(rule)
                    && rule.ref().version() <= old.ref().version()) {
                found.add(rule.ref().id() + ": changed, so its version must be above "
                        + old.ref().version());
            }
        }
        return found;
    }

    /** Returns each rule that says something else than a rule of the same id and version did that was once in force. */
    public static List<String> changedUnderTheirVersion(List<CareRules> onceInForce, CareRules candidate) {
        Map<RuleRef, CareRule> before = new HashMap<>();
        onceInForce.forEach(rules -> rules.all().forEach(rule -> before.put(rule.ref(), rule)));
        return candidate.all().stream()
                .filter(rule -> before.containsKey(rule.ref()))
                .filter(rule -> !before.get(rule.ref()).equals(rule))
                .map(rule -> rule.ref().id() + ": version " + rule.ref().version()
                        + " was in force with another content, so the version must be a new one")
                .toList();
    }

    private void names() {
        var seen = new HashSet<String>();
        for (CareRule rule : rules.all()) {
            require(seen.add(rule.ref().id()), rule, "is there twice");
            require(rule.ref().version() >= 1, rule, "needs a version of at least 1");
        }
    }

    private void interval(CareRule.Interval rule) {
        boolean inspection = rule.kind() == TaskKind.INSPECTION;
        require(inspection || rule.kind() == TaskKind.WASH, rule, "an interval rule is for wash or inspection");
        require(rule.pattern() != UsePattern.UNKNOWN, rule, "unknown use is cared for as full-time: name that");
        require(
                !(inspection && rule.pattern() == UsePattern.SEASONAL),
                rule,
                "seasonal units are inspected at opening and closing, not by interval");
        require(rule.every().shortestDays() > rules.combineDays(), rule, "every must be longer than combineWithin");
        require(rule.opensBefore() < rule.every().shortestDays(), rule, "opensBefore must be shorter than every");
        int slowest = rule.every().longestDays() + rule.lateAfter();
        require(
                !inspection || slowest * rules.fullTimeAtLeast() <= YEAR,
                rule,
                "every and lateAfter together leave fewer than " + rules.fullTimeAtLeast() + " inspections in a year");
    }

    private void everyUnitHasARule() {
        boolean fullTime = rules.intervals().stream()
                .anyMatch(rule -> rule.kind() == TaskKind.INSPECTION
                        && rule.pattern() == UsePattern.FULL_TIME
                        && rule.when().equals(Conditions.NONE));
        if (!fullTime) {
            problems.add(RuleProblem.ofFile(
                    "there must be a full-time inspection rule without conditions, or units are left without a date"));
        }
        boolean strike = rules.events().stream()
                .anyMatch(
                        rule -> rule.event() == TaskOrigin.STRIKE && rule.when().equals(Conditions.NONE));
        if (!strike) {
            problems.add(RuleProblem.ofFile("there must be a strike rule without conditions"));
        }
    }

    /** Opening and closing must lie too far apart, in the tightest season, for one inspection to serve both. */
    private void seasonKeepsItsTwo() {
        CareRule.Opening opening = rules.opening();
        CareRule.Closing closing = rules.closing();
        int combine = rules.combineDays();
        require(opening.opensBefore() <= combine, opening, "opensBefore must not exceed combineWithin");
        require(closing.opensBefore() <= combine, closing, "opensBefore must not exceed combineWithin");
        int apart = Season.SHORTEST_DAYS - closing.within() - closing.lateAfter() - opening.earlyRentalDays();
        require(
                apart > combine,
                closing,
                "within, lateAfter, earlyRentalsFrom and combineWithin together must stay under " + Season.SHORTEST_DAYS
                        + " days, or one inspection serves closing and next opening");
        require(
                SeasonWork.SHORTEST_OPEN_DAYS + closing.within() - opening.lateAfter() > combine,
                closing,
                "combineWithin is so long that one inspection serves opening and closing");
    }

    private void event(CareRule.Event rule) {
        require(rule.event().event(), rule, "'" + rule.event().word() + "' is not an event");
        require(rule.kind().fullInspection(), rule, "an event asks for an inspection or a strike inspection");
        boolean strike = rule.event() == TaskOrigin.STRIKE;
        require(!strike || rule.kind() == TaskKind.STRIKE_INSPECTION, rule, "a strike asks for a strike inspection");
        require(!strike || rule.within().isZero(), rule, "a strike is due at once");
    }

    private void require(boolean holds, CareRule rule, String problem) {
        if (!holds) {
            problems.add(new RuleProblem(rule.ref().id(), null, problem, 0));
        }
    }
}
