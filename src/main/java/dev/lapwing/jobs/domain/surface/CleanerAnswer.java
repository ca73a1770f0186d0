package dev.lapwing.jobs.domain.surface;

import java.util.List;

/** Whether a cleaner may touch a roof. */
public sealed interface CleanerAnswer {
    /**
     * It may.
     *
     * @param because one sentence, naming the maker's statement where one was needed
     */
    record Allowed(String because) implements CleanerAnswer {}

    /**
     * It may not.
     *
     * @param reasons one sentence for each class of the cleaner that the surface does not bear
     * @param makerMayAllow whether a statement of the roof's maker would change the answer
     */
    record Refused(List<String> reasons, boolean makerMayAllow) implements CleanerAnswer {
        public Refused {
            reasons = List.copyOf(reasons);
        }
    }
}
