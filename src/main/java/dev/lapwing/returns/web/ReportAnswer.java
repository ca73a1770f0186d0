package dev.lapwing.returns.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.photos.web.PhotoAnswer;
import dev.lapwing.returns.Consequences;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.UUID;

/** A filed report as it is answered, with what followed from it. */
@JsonInclude(JsonInclude.Include.NON_NULL)
record ReportAnswer(
        UUID id,
        String unit,
        OffsetDateTime returnedAt,
        String note,
        String reportedBy,
        ReadingAnswer reading,
        StrikeId strike,
        Consequences.HeldBy hold,
        Consequences.Work task,
        Question question,
        List<PhotoAnswer> photos) {

    record StrikeId(UUID id) {}

    /** What the desk is asked; the answer is null until given. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Question(UUID id, String text, Boolean contact, String answeredBy) {}
}
