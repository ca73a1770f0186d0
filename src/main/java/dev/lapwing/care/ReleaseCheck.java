package dev.lapwing.care;

import dev.lapwing.care.storage.Hold;
import java.time.Instant;
import java.util.List;

/** Knows whether what caused a hold has been looked at and put right. */
public interface ReleaseCheck {
    /**
     * Whether a hold may end.
     *
     * @param ground what its release certifies, or null while it may not end
     * @param missing everything that is still missing, empty when it may end
     */
    record Decision(String ground, List<String> missing) {
        public Decision {
            missing = List.copyOf(missing);
        }
    }

    /** Decides on a hold that somebody wants to end at a moment with a statement. */
    Decision decide(Hold hold, Signer signer, String statement, Instant at);
}
