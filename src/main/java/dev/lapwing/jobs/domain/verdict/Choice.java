package dev.lapwing.jobs.domain.verdict;

import java.util.List;

/**
 * A decision left to the coordinator, with what speaks for each option. Until it is made the first option stands.
 *
 * @param options what may be chosen, mildest first
 */
public record Choice(List<Option> options) {
    public Choice {
        options = List.copyOf(options);
    }

    /**
     * One way to go.
     *
     * @param speaksFor what speaks for it, one sentence each
     */
    public record Option(Work work, List<String> speaksFor) {
        public Option {
            speaksFor = List.copyOf(speaksFor);
        }
    }

    boolean offers(Work work) {
        return options.stream().anyMatch(option -> option.work() == work);
    }
}
