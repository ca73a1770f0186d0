package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.time.Instant;

/** Findings and situations that say only what matters. */
final class Findings {
    static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");
    static final Situation NOTHING_PRESSES = new Situation(NOON, null, null, true);

    private Findings() {}

    static Finding any(FindingKind kind) {
        return new Finding("front-left", kind, null, null, null, "");
    }

    static Finding crack(Depth depth) {
        return new Finding("rear-left", FindingKind.CRACK, depth, null, 12.0, "");
    }

    static Finding adhesion(Extent extent) {
        return adhesion(extent, "middle-right");
    }

    static Finding adhesion(Extent extent, String zone) {
        return new Finding(zone, FindingKind.ADHESION, null, extent, null, "");
    }

    static Finding attachment(Extent extent) {
        return new Finding("middle-centre", FindingKind.ATTACHMENT, null, extent, null, "");
    }
}
