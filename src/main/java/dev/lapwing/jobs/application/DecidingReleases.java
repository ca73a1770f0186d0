package dev.lapwing.jobs.application;

import dev.lapwing.care.ReleaseCheck;
import dev.lapwing.care.Signer;
import dev.lapwing.care.domain.HoldState;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.jobs.domain.release.Release;
import dev.lapwing.jobs.domain.release.ReleaseRequest;
import dev.lapwing.jobs.domain.release.ReleaseRules;
import dev.lapwing.jobs.domain.release.SignedInspection;
import dev.lapwing.jobs.domain.release.SignedWork;
import dev.lapwing.jobs.domain.verdict.Work;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.SignedSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;

/** Lets the signed sheets of a unit speak for the end of its holds. */
@ApplicationScoped
class DecidingReleases implements ReleaseCheck {
    @Inject
    ReleaseRules rules;

    @Override
    @Transactional
    public Decision decide(Hold hold, Signer signer, String statement, Instant at) {
        List<SignedSheet> sheets = SignedSheet.ofUnit(hold.unit.id);
        var request = new ReleaseRequest(
                asRuled(hold),
                new ReleaseRequest.Signer(signer.username(), List.copyOf(signer.roles()), true),
                statement,
                at,
                sheets.stream().map(DecidingReleases::inspection).toList(),
                sheets.stream()
                        .filter(sheet -> sheet.work != null)
                        .map(sheet -> new SignedWork(sheet.work, sheet.signedBy, sheet.signedAt))
                        .toList(),
                List.of());
        Release release = rules.decide(request);
        return release instanceof Release.Granted granted
                ? new Decision(granted.ground().word(), List.of())
                : new Decision(null, ((Release.Refused) release).reasons());
    }

    private static dev.lapwing.jobs.domain.release.Hold asRuled(Hold hold) {
        var cause =
                switch (hold.cause) {
                    case STRIKE -> dev.lapwing.jobs.domain.release.Hold.Cause.STRIKE;
                    case QUESTION -> dev.lapwing.jobs.domain.release.Hold.Cause.UNCLEAR_READING;
                    case FINDING -> dev.lapwing.jobs.domain.release.Hold.Cause.FINDING;
                };
        return new dev.lapwing.jobs.domain.release.Hold(
                cause, hold.causeId.toString(), hold.openedAt, hold.state == HoldState.OPEN);
    }

    private static SignedInspection inspection(SignedSheet sheet) {
        Set<Work> holding = PlannedFollowUp.ofSheet(sheet.taskId).stream()
                .filter(followUp -> followUp.holds)
                .map(followUp -> followUp.work)
                .collect(Collectors.toSet());
        Set<String> causes = sheet.causes.stream().map(UUID::toString).collect(Collectors.toSet());
        return new SignedInspection(causes, sheet.signedBy, sheet.signedAt, sheet.verdict, holding);
    }
}
