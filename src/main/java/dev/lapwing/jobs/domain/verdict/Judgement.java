package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Judges the findings of one sheet; the worst finding rules. Used once. */
final class Judgement {
    private static final Comparator<FollowUp> FIRST_NEEDED_FIRST =
            Comparator.comparing(FollowUp::urgency).reversed().thenComparing(FollowUp::work);

    private final List<Rule> rules;
    private final RuleSettings settings;
    private final Situation situation;
    private final Map<Work, Wanted> wanted = new EnumMap<>(Work.class);
    private final List<Reason> reasons = new ArrayList<>();

    Judgement(List<Rule> rules, RuleSettings settings, Situation situation) {
        this.rules = rules;
        this.settings = settings;
        this.situation = situation;
    }

    /** How soon a kind of work is wanted, and by which rules. */
    private record Wanted(Urgency urgency, Set<String> rules) {
        Wanted and(Wanted other) {
            Set<String> all = new LinkedHashSet<>(rules);
            all.addAll(other.rules);
            return new Wanted(urgency.sooner(other.urgency), all);
        }
    }

    Outcome ofReferred(String why, List<Finding> findings) {
        reasons.add(new Reason(TradeRules.REFERRED, Verdict.STOP_AND_REFER, true, List.of(), why));
        want(Work.WORKSHOP_REFERRAL, new Wanted(Urgency.AT_ONCE, Set.of(TradeRules.REFERRED)));
        return of(findings);
    }

    Outcome of(List<Finding> findings) {
        rules.forEach(rule -> apply(rule, findings));
        letStrongestSealantRunCoverTheRest();
        Set<Work> first = firstNeeded();
        first.stream().filter(work -> work != Work.WORKSHOP_REFERRAL).forEach(this::wantBeforeSealant);
        List<FollowUp> followUps = wanted.keySet().stream()
                .map(work -> followUp(work, first))
                .sorted(FIRST_NEEDED_FIRST)
                .toList();
        return new Outcome(
                worst(),
                reasons.stream().anyMatch(Reason::hold),
                followUps.stream().map(FollowUp::urgency).reduce(Urgency.NONE, Urgency::sooner),
                first.contains(Work.CONFIRM_MEMBRANE) || first.contains(Work.SURFACE_TREATMENT),
                followUps,
                choice(findings),
                reasons.stream()
                        .sorted(Comparator.comparing(Reason::verdict).reversed())
                        .toList());
    }

    private void apply(Rule rule, List<Finding> findings) {
        List<Finding> found = rule.finds().among(findings, settings);
        if (found.isEmpty()) {
            return;
        }
        Consequence consequence = rule.consequence();
        reasons.add(new Reason(rule.id(), consequence.verdict(), consequence.hold(), found, rule.because()));
        Urgency urgency = consequence.urgency(situation.pressed(settings));
        consequence.needed().ifPresent(work -> want(work, new Wanted(urgency, Set.of(rule.id()))));
    }

    private void want(Work work, Wanted more) {
        wanted.merge(work, more, Wanted::and);
    }

    private void letStrongestSealantRunCoverTheRest() {
        List<Work> runs = wanted.keySet().stream().filter(Work::isSealantRun).toList();
        for (Work covered : runs.subList(0, Math.max(0, runs.size() - 1))) {
            want(runs.get(runs.size() - 1), wanted.remove(covered));
        }
    }

    /** Returns the work of this sheet that sealant work has to wait for. */
    private Set<Work> firstNeeded() {
        Set<Work> first = EnumSet.noneOf(Work.class);
        boolean sealing = wanted.keySet().stream().anyMatch(Work::needsSealant);
        if (sealing && !situation.membraneConfirmed()) {
            first.add(Work.CONFIRM_MEMBRANE);
        }
        if (reasons.stream().anyMatch(reason -> reason.rule().equals(TradeRules.CHALKING))) {
            first.add(Work.SURFACE_TREATMENT);
        }
        if (wanted.containsKey(Work.WORKSHOP_REFERRAL)) {
            first.add(Work.WORKSHOP_REFERRAL);
        }
        return first;
    }

    /** What must come before sealant work is wanted as soon as the soonest of it. */
    private void wantBeforeSealant(Work first) {
        wanted.entrySet().stream()
                .filter(entry -> entry.getKey().needsSealant())
                .map(Map.Entry::getValue)
                .reduce(Wanted::and)
                .ifPresent(sealing -> want(first, sealing));
    }

    private FollowUp followUp(Work work, Set<Work> first) {
        Wanted asked = wanted.get(work);
        return new FollowUp(
                work,
                asked.urgency(),
                situation.due(asked.urgency(), settings).orElseThrow(),
                work.needsSealant() ? first : Set.of(),
                List.copyOf(asked.rules()));
    }

    private Verdict worst() {
        return reasons.stream().map(Reason::verdict).reduce(Verdict.FIT, Verdict::worse);
    }

    private Choice choice(List<Finding> findings) {
        boolean open = wanted.containsKey(Work.REWORK)
                && wanted.get(Work.REWORK).rules().contains(TradeRules.LOOSE_IN_SEVERAL);
        return open ? new Choice(List.of(rework(), replacement(findings))) : null;
    }

    private static Choice.Option rework() {
        return new Choice.Option(
                Work.REWORK,
                List.of(
                        "keeps the old sealant where it still holds",
                        "is the shorter job and brings no tool near the membrane"));
    }

    private static Choice.Option replacement(List<Finding> findings) {
        List<String> speaksFor = new ArrayList<>();
        speaksFor.add("new sealant over loose sealant holds no better than what is beneath");
        List<String> alsoFailing = findings.stream()
                .filter(finding -> finding.kind() == FindingKind.VOID || finding.kind() == FindingKind.CRACK)
                .map(Finding::inWords)
                .toList();
        if (!alsoFailing.isEmpty()) {
            speaksFor.add("the old sealant also fails otherwise: " + String.join("; ", alsoFailing));
        }
        return new Choice.Option(Work.SEALANT_REPLACEMENT, speaksFor);
    }
}
