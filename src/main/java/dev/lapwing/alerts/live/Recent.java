package dev.lapwing.alerts.live;

import java.util.concurrent.ConcurrentNavigableMap;
import java.util.concurrent.ConcurrentSkipListMap;

/** The last events, shared by all listeners of a node. One thread adds; any may read. */
final class Recent {
    private final ConcurrentNavigableMap<Long, Happening> kept = new ConcurrentSkipListMap<>();
    private final int most;
    private int count;
    /** The place before the oldest event that is kept. */
    private volatile long floor;

    private volatile long newest;

    /** Starts empty, with nothing before {@code place} on record. */
    Recent(int most, long place) {
        this.most = most;
        floor = place;
        newest = place;
    }

    /** Adds an event that comes after all others. */
    void add(Happening happening) {
        kept.put(happening.position(), happening);
        newest = happening.position();
        if (++count > most) {
            floor = kept.pollFirstEntry().getKey();
            count--;
        }
    }

    /** Returns the first event after a place, or null when there is none yet. */
    Happening after(long place) {
        var next = kept.higherEntry(place);
        return next == null ? null : next.getValue();
    }

    /** Returns whether all that came after a place is on record here. */
    boolean reachesBackTo(long place) {
        return floor <= place && place <= newest;
    }

    long newest() {
        return newest;
    }
}
