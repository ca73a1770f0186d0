package dev.lapwing.jobs.application;

import dev.lapwing.care.Signer;
import dev.lapwing.care.application.ReleasingHolds;
import dev.lapwing.care.storage.Hold;
import dev.lapwing.jobs.storage.PlannedFollowUp;
import dev.lapwing.jobs.storage.SignedSheet;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;

/** Ends the holds that a signed sheet speaks for. */
@ApplicationScoped
class EndingHolds {
    @Inject
    ReleasingHolds releasing;

    /** Releases what the sheet covers, as far as the rules grant it; returns what keeps the unit's other holds open. */
    List<String> after(SignedSheet sheet, Signer signer) {
        Set<UUID> causes = causesOf(sheet);
        List<String> standing = new ArrayList<>();
        for (Hold hold : Hold.openOf(List.of(sheet.unitId))) {
            List<String> missing = causes.contains(hold.causeId)
                    ? releasing.releaseIfGranted(hold, signer, sheet.signedName, sheet.statement, sheet.signedAt)
                    : List.of("this sheet does not cover it");
            if (!missing.isEmpty()) {
                standing.add("hold for " + hold.cause.word() + " stands: " + String.join("; ", missing));
            }
        }
        return standing;
    }

    /** A sheet of follow-up work also speaks for what the sheet that led to it looked into. */
    private static Set<UUID> causesOf(SignedSheet sheet) {
        Set<UUID> causes = new HashSet<>(sheet.causes);
        PlannedFollowUp planned = PlannedFollowUp.findById(sheet.taskId);
        if (planned != null) {
            SignedSheet origin = SignedSheet.findById(planned.sheetId);
            causes.addAll(origin.causes);
        }
        return causes;
    }
}
