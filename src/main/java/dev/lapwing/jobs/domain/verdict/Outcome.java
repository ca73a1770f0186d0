package dev.lapwing.jobs.domain.verdict;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The verdict on a roof, what follows, and why.
 *
 * @param verdict the worst that any rule led to
 * @param hold whether the unit must not be rented until the work that holds it is signed
 * @param urgency the soonest of all follow-ups
 * @param sealantWorkWaits whether no sealant may be put on before other work is done
 * @param followUps the work that follows, soonest and first needed first
 * @param choice what the coordinator has to decide, or null
 * @param reasons every rule that applied, worst first
 */
public record Outcome(
        Verdict verdict,
        boolean hold,
        Urgency urgency,
        boolean sealantWorkWaits,
        List<FollowUp> followUps,
        Choice choice,
        List<Reason> reasons) {
    public Outcome {
        followUps = List.copyOf(followUps);
        reasons = List.copyOf(reasons);
    }

    public Optional<Choice> toDecide() {
        return Optional.ofNullable(choice);
    }

    /** Returns the follow-up of a kind of work, if there is one. */
    public Optional<FollowUp> followUp(Work work) {
        return followUps.stream().filter(f -> f.work() == work).findFirst();
    }

    /** Returns the work that must be done and signed before the hold can end; empty when nothing holds. */
    public Set<Work> holdingWork() {
        Set<String> holding =
                reasons.stream().filter(Reason::hold).map(Reason::rule).collect(Collectors.toSet());
        return followUps.stream()
                .filter(f -> f.rules().stream().anyMatch(holding::contains))
                .map(FollowUp::work)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(Work.class)));
    }

    /**
     * Returns the outcome after the coordinator's decision.
     *
     * @throws IllegalArgumentException when the work is not one of the options
     */
    public Outcome decided(Work chosen) {
        if (choice == null || !choice.offers(chosen)) {
            throw new IllegalArgumentException(chosen.word() + " is not one of the options of this verdict");
        }
        Work standing = choice.options().get(0).work();
        List<FollowUp> decided = followUps.stream()
                .map(f ->
                        f.work() == standing ? new FollowUp(chosen, f.urgency(), f.due(), f.waitsFor(), f.rules()) : f)
                .toList();
        Verdict raised = chosen == Work.SEALANT_REPLACEMENT ? verdict.worse(Verdict.REPLACE) : verdict;
        return new Outcome(raised, hold, urgency, sealantWorkWaits, decided, null, reasons);
    }
}
