package dev.lapwing.jobs.domain.release;

import dev.lapwing.jobs.domain.Words;
import java.util.List;

/** Whether a hold ends. */
public sealed interface Release {
    /**
     * It ends.
     *
     * @param ground what is certified; kept as such, for repaired and repair unnecessary are different statements (49 CFR
     *     396.11(a)(3))
     * @param because in one sentence
     */
    record Granted(Ground ground, String because) implements Release {}

    /**
     * It stands.
     *
     * @param reasons everything that is missing
     */
    record Refused(List<String> reasons) implements Release {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }

    /** What a release certifies. */
    enum Ground {
        REPAIR_UNNECESSARY,
        REPAIRED,
        /** An unclear reading turned out to be no contact. */
        NO_CONTACT;

        public String word() {
            return Words.of(this);
        }
    }
}
