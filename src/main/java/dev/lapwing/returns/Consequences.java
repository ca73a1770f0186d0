package dev.lapwing.returns;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.OffsetDateTime;
import java.util.Optional;
import java.util.UUID;

/** Knows what followed from a report in other areas. */
public interface Consequences {
    /** The hold that was opened. */
    record HeldBy(UUID id) {}

    /**
     * The work that was opened.
     *
     * @param due the instant it is due, with the depot's offset
     * @param assignee sign-in name of the tech who has it, or null
     */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Work(UUID id, OffsetDateTime due, String assignee) {}

    /** Returns the hold that a strike or a question opened. */
    Optional<HeldBy> holdOf(UUID causeId);

    /** Returns the inspection that a strike opened. */
    Optional<Work> workOf(UUID strikeId);
}
