package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.util.List;
import java.util.function.Predicate;

/**
 * The rules of the trade as the product brings them. Common practice, no source, except where the sentence says project
 * default.
 */
final class TradeRules {
    static final String CHALKING = "chalking";
    /** Not among the rules: somebody stopped and referred, whatever was found. */
    static final String REFERRED = "stop-and-refer";

    static final String LOOSE_IN_SEVERAL = "loose-in-several-places";

    static final List<Rule> ALL = List.of(
            each("dirt", is(FindingKind.DIRT), Consequence.nothing(), "dirt is washed off in the same job"),
            each("holds", Finding::holds, Consequence.nothing(), "what holds when picked or pulled stays as it is"),
            each(
                    "surface-crack",
                    is(FindingKind.CRACK).and(depth(Depth.SURFACE)),
                    Consequence.nothing(),
                    "cracks in the crust of the sealant alone are acceptable"),
            each(
                    CHALKING,
                    is(FindingKind.CHALKING),
                    new Consequence(Verdict.FIT, Work.SURFACE_TREATMENT, false, Urgency.ROUTINE, Urgency.ROUTINE),
                    "sealant may not hold on a chalking surface: treat and test it before any sealant work"),
            each(
                    "deep-crack",
                    is(FindingKind.CRACK).and(depth(Depth.DEEP)),
                    Consequence.routine(Verdict.TOUCH_UP, Work.TOUCH_UP),
                    "a deep crack is touched up"),
            each(
                    "void",
                    is(FindingKind.VOID),
                    Consequence.pressing(Verdict.TOUCH_UP, Work.TOUCH_UP),
                    "a void is touched up, urgently when rain is near or the unit goes out"),
            each(
                    "loose-in-one-place",
                    is(FindingKind.ADHESION).and(extent(Extent.LOOSE_HERE)),
                    Consequence.routine(Verdict.TOUCH_UP, Work.TOUCH_UP),
                    "sealant loose in one place is touched up"),
            new Rule(
                    LOOSE_IN_SEVERAL,
                    (findings, settings) -> looseFromPlaces(findings, 2),
                    Consequence.pressing(Verdict.REWORK, Work.REWORK),
                    "sealant loose in several places is reworked over the old or replaced; the coordinator decides"),
            new Rule(
                    "loose-all-over",
                    (findings, settings) -> severalEach(findings, settings.replaceFromZones()),
                    Consequence.pressing(Verdict.REPLACE, Work.SEALANT_REPLACEMENT),
                    "sealant loose in several places of several zones is replaced (project default)"),
            each(
                    "loose-attachment",
                    is(FindingKind.ATTACHMENT).and(finding -> !finding.holds()),
                    new Consequence(Verdict.TOUCH_UP, Work.ATTACHMENT_REPAIR, true, Urgency.URGENT, Urgency.URGENT),
                    "what is loose on the roof can come off on the road: fasten it before it goes out (project default)"),
            each(
                    "tear",
                    is(FindingKind.TEAR),
                    Consequence.hold(Verdict.REWORK, Work.MEMBRANE_REPAIR),
                    "a torn membrane is repaired before the unit goes out"),
            each(
                    "puncture",
                    is(FindingKind.PUNCTURE),
                    Consequence.hold(Verdict.REWORK, Work.MEMBRANE_REPAIR),
                    "a pierced membrane is repaired before the unit goes out"),
            each(
                    "soft-spot",
                    is(FindingKind.SOFT_SPOT),
                    Consequence.hold(Verdict.STOP_AND_REFER, Work.WORKSHOP_REFERRAL),
                    "a soft spot may mean a wet or rotten deck: stop, and hand over to a qualified workshop"));

    private TradeRules() {}

    static Rule named(String id) {
        return ALL.stream().filter(rule -> rule.id().equals(id)).findFirst().orElseThrow();
    }

    private static Rule each(String id, Predicate<Finding> applies, Consequence consequence, String because) {
        return new Rule(
                id, (findings, settings) -> findings.stream().filter(applies).toList(), consequence, because);
    }

    private static Predicate<Finding> is(FindingKind kind) {
        return finding -> finding.kind() == kind;
    }

    private static Predicate<Finding> depth(Depth depth) {
        return finding -> finding.depth() == depth;
    }

    private static Predicate<Finding> extent(Extent extent) {
        return finding -> finding.extent() == extent;
    }

    /** Counts one place for "loose here" and two for "loose in several". */
    private static List<Finding> looseFromPlaces(List<Finding> findings, int places) {
        List<Finding> loose = findings.stream()
                .filter(is(FindingKind.ADHESION).and(finding -> !finding.holds()))
                .toList();
        int counted = loose.stream()
                .mapToInt(finding -> finding.extent() == Extent.LOOSE_IN_SEVERAL ? 2 : 1)
                .sum();
        return counted >= places ? loose : List.of();
    }

    private static List<Finding> severalEach(List<Finding> findings, int zones) {
        List<Finding> several = findings.stream()
                .filter(is(FindingKind.ADHESION).and(extent(Extent.LOOSE_IN_SEVERAL)))
                .toList();
        return several.stream().map(Finding::zone).distinct().count() >= zones ? several : List.of();
    }
}
