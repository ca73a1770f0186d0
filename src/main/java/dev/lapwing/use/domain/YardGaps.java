package dev.lapwing.use.domain;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The gaps between a unit's rentals and workshop stays, oldest first. */
public final class YardGaps {
    private final List<YardGap> gaps;

    private YardGaps(List<YardGap> gaps) {
        this.gaps = gaps;
    }

    /**
     * Finds the gaps from a moment on; the first begins at that moment if the unit is in the yard then. A span whose end
     * is not known ends the list.
     */
    public static YardGaps from(Instant start, List<LogSpan> spans) {
        List<LogSpan> away = spans.stream()
                .filter(span -> span.kind() != LogKind.STORAGE)
                .filter(span -> span.until() == null || span.until().isAfter(start))
                .sorted(Comparator.comparing(LogSpan::from))
                .toList();
        var gaps = new ArrayList<YardGap>();
        Instant free = start;
        for (LogSpan span : away) {
            if (span.from().isAfter(free)) {
                gaps.add(new YardGap(free, span.from()));
            }
            if (span.until() == null) {
                return new YardGaps(gaps);
            }
            free = span.until().isAfter(free) ? span.until() : free;
        }
        gaps.add(new YardGap(free, null));
        return new YardGaps(gaps);
    }

    public List<YardGap> all() {
        return List.copyOf(gaps);
    }

    /** Returns the gap the moment lies in, or null while the unit is away. */
    public YardGap at(Instant moment) {
        return gaps.stream().filter(gap -> gap.contains(moment)).findFirst().orElse(null);
    }

    /** Returns the next gap that begins after the moment, or null. */
    public YardGap after(Instant moment) {
        return gaps.stream()
                .filter(gap -> gap.from().isAfter(moment))
                .findFirst()
                .orElse(null);
    }
}
