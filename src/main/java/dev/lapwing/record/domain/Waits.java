package dev.lapwing.record.domain;

import java.time.Duration;
import java.util.List;

/**
 * How long something took, over many cases. Quantiles by nearest rank: the smallest case that at least the given share
 * of the cases does not exceed.
 */
public record Waits(List<Duration> sorted) {
    public Waits {
        sorted = sorted.stream().sorted().toList();
    }

    public int count() {
        return sorted.size();
    }

    /** Returns the quantile for a share above 0 and up to 1, or null when there is no case. */
    public Duration quantile(double share) {
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("share must be above 0 and up to 1, was " + share);
        }
        return sorted.isEmpty() ? null : sorted.get((int) Math.ceil(share * sorted.size()) - 1);
    }
}
