package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.verdict.Work;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Decides whether a hold ends.
 *
 * @param roles whose signature ends a hold, as words of roles; at least one
 * @param secondPersonAfterRepair whether somebody other than those who repaired must sign
 */
public record ReleaseRules(Set<String> roles, boolean secondPersonAfterRepair) {
    /** The project's defaults; no source. */
    public static final ReleaseRules DEFAULTS = new ReleaseRules(Set.of("coordinator", "tech"), true);

    public ReleaseRules {
        roles = Set.copyOf(roles);
        if (roles.isEmpty()) {
            throw new IllegalArgumentException("somebody must have the right to release");
        }
    }

    /** Grants the release, or refuses it with everything that is missing. */
    public Release decide(ReleaseRequest request) {
        List<String> missing = new ArrayList<>();
        if (!request.hold().open()) {
            missing.add("the hold is already released");
        }
        checkSigner(request, missing);
        if (Objects.toString(request.statement(), "").isBlank()) {
            missing.add("a signed statement is needed");
        }
        Release cause = decideOnCause(request);
        if (cause instanceof Release.Refused refused) {
            missing.addAll(refused.reasons());
        }
        return missing.isEmpty() ? cause : new Release.Refused(missing);
    }

    private void checkSigner(ReleaseRequest request, List<String> missing) {
        ReleaseRequest.Signer signer = request.signer();
        if (!signer.active()) {
            missing.add(signer.id() + " no longer has the right to sign");
        } else if (signer.roles().stream().noneMatch(roles::contains)) {
            missing.add(signer.id() + " has no right to release; needed is one of "
                    + String.join(", ", roles.stream().sorted().toList()));
        }
    }

    private Release decideOnCause(ReleaseRequest request) {
        List<SignedInspection> inspections = inspectionsOfTheCause(request);
        if (!inspections.isEmpty()) {
            return decideOnInspections(request, inspections);
        }
        Optional<NoContact> answer = answerThatSettles(request);
        if (answer.isPresent()) {
            return new Release.Granted(
                    Release.Ground.NO_CONTACT,
                    "answered by " + answer.get().by() + ": " + answer.get().why());
        }
        return new Release.Refused(List.of("the cause of the hold, " + causeInWords(request.hold())
                + ", is not covered by a signed inspection since "
                + request.hold().since()));
    }

    private static String causeInWords(Hold hold) {
        return hold.cause().word().replace('-', ' ') + " " + hold.causeId();
    }

    /** Returns the signed inspections of the cause since the hold began, oldest first. */
    private static List<SignedInspection> inspectionsOfTheCause(ReleaseRequest request) {
        Hold hold = request.hold();
        return request.inspections().stream()
                .filter(sheet -> sheet.covers().contains(hold.causeId()))
                .filter(sheet -> isWithin(sheet.signedAt(), hold.since(), request.at()))
                .sorted(Comparator.comparing(SignedInspection::signedAt))
                .toList();
    }

    private static Optional<NoContact> answerThatSettles(ReleaseRequest request) {
        Hold hold = request.hold();
        return request.answers().stream()
                .filter(answer -> hold.cause() == Hold.Cause.UNCLEAR_READING)
                .filter(answer -> answer.reportId().equals(hold.causeId()))
                .filter(answer -> isWithin(answer.at(), hold.since(), request.at()))
                .findFirst();
    }

    /** What an earlier sheet asked for stays asked for, even when a later one found nothing. */
    private Release decideOnInspections(ReleaseRequest request, List<SignedInspection> inspections) {
        List<String> missing = new ArrayList<>();
        inspections.forEach(inspection -> checkHoldingWork(inspection, request, missing));
        List<SignedWork> repairs = doneSince(request.hold().since(), request).stream()
                .filter(work -> work.work().isRepair())
                .toList();
        if (secondPersonAfterRepair && isOneOf(request.signer(), repairs)) {
            missing.add("a second person must release after a repair; "
                    + request.signer().id() + " did the repair");
        }
        SignedInspection latest = inspections.get(inspections.size() - 1);
        return missing.isEmpty() ? granted(latest, repairs) : new Release.Refused(missing);
    }

    private static void checkHoldingWork(SignedInspection inspection, ReleaseRequest request, List<String> missing) {
        List<SignedWork> done = doneSince(inspection.signedAt(), request);
        for (Work needed : new TreeSet<>(inspection.holdingWork())) {
            if (done.stream().noneMatch(work -> work.work().covers(needed))) {
                missing.add("the verdict is " + inspection.verdict().word() + ": "
                        + needed.word().replace('-', ' ') + " is not yet done and signed");
            }
        }
    }

    private static List<SignedWork> doneSince(Instant from, ReleaseRequest request) {
        return request.work().stream()
                .filter(work -> isWithin(work.signedAt(), from, request.at()))
                .toList();
    }

    private static boolean isOneOf(ReleaseRequest.Signer signer, List<SignedWork> repairs) {
        return repairs.stream().anyMatch(repair -> repair.by().equals(signer.id()));
    }

    private static Release granted(SignedInspection inspection, List<SignedWork> repairs) {
        String verdict = "inspected by " + inspection.by() + ", verdict "
                + inspection.verdict().word();
        if (repairs.isEmpty()) {
            return new Release.Granted(Release.Ground.REPAIR_UNNECESSARY, verdict);
        }
        List<String> works = repairs.stream()
                .map(repair -> repair.work().word().replace('-', ' ') + " by " + repair.by())
                .toList();
        return new Release.Granted(Release.Ground.REPAIRED, verdict + "; " + String.join(", ", works));
    }

    private static boolean isWithin(Instant moment, Instant from, Instant to) {
        return !moment.isBefore(from) && !moment.isAfter(to);
    }
}
