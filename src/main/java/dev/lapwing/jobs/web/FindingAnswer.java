package dev.lapwing.jobs.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.storage.RecordedFinding;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.UUID;

/** A finding as it is answered; the time is that of the depot. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record FindingAnswer(
        UUID id,
        String zone,
        String kind,
        String depth,
        String extent,
        Double lengthCm,
        String note,
        Double x,
        Double y,
        OffsetDateTime recordedAt,
        String recordedBy,
        boolean byLink) {

    static FindingAnswer of(RecordedFinding finding, ZoneId zone) {
        return new FindingAnswer(
                finding.id,
                finding.zone,
                finding.kind.word(),
                finding.depth == null ? null : Words.of(finding.depth),
                finding.extent == null ? null : Words.of(finding.extent),
                finding.lengthCm,
                finding.note,
                finding.x,
                finding.y,
                finding.recordedAt.atZone(zone).toOffsetDateTime(),
                finding.recordedBy,
                finding.byLink);
    }
}
