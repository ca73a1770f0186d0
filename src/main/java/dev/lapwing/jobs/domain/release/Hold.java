package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.Words;
import java.time.Instant;

/**
 * A hold as the release sees it.
 *
 * @param cause what it was opened for
 * @param causeId id of the strike, report or sheet that caused it
 * @param since when it was opened
 * @param open whether it still stands
 */
public record Hold(Cause cause, String causeId, Instant since, boolean open) {
    /** What a hold is opened for. */
    public enum Cause {
        STRIKE,
        UNCLEAR_READING,
        FINDING;

        public String word() {
            return Words.of(this);
        }
    }
}
