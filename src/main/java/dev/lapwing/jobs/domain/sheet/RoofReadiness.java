package dev.lapwing.jobs.domain.sheet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;

/**
 * How far a roof is on its way from dirty to dry, as its sheet tells.
 *
 * @param washedAt when the last wash was finished, or null
 * @param tooDirty whether it was called too dirty to see since
 * @param stopped why nobody goes up, or null
 * @param begun whether looking and feeling began after the last wash, dirt and stop
 */
public record RoofReadiness(Instant washedAt, boolean tooDirty, String stopped, boolean begun) {
    private static final RoofReadiness UNTOUCHED = new RoofReadiness(null, false, null, false);

    /** Follows the events of a sheet, oldest first. */
    public static RoofReadiness after(List<SheetEvent> events) {
        RoofReadiness now = UNTOUCHED;
        for (SheetEvent event : events) {
            now = now.after(event);
        }
        return now;
    }

    private RoofReadiness after(SheetEvent event) {
        return switch (event.kind()) {
            case TOO_DIRTY -> new RoofReadiness(washedAt, true, stopped, false);
            case WASHED -> new RoofReadiness(event.moment(), false, stopped, false);
            case STOPPED -> new RoofReadiness(washedAt, tooDirty, event.words(), false);
            case BEGUN, BEGUN_EARLY -> new RoofReadiness(washedAt, tooDirty, null, true);
            case CLEANER, SEALANT, TREATED, TREATED_IN_VAIN -> this;
        };
    }

    /**
     * Decides whether the inspection may begin; see {@link DryingClock#start}.
     *
     * @param washNeeded whether a roof without a recorded wash is washed first
     */
    public InspectionStart start(DryingClock clock, boolean washNeeded, Instant now, String reasonToStartEarly) {
        if (washedAt == null && !tooDirty && !washNeeded) {
            return new InspectionStart.Ready(now);
        }
        return clock.start(washedAt, tooDirty, now, reasonToStartEarly);
    }

    /**
     * Says why no finding is taken and nothing signed now, or nothing. Looking need not be begun in so many words once
     * the roof has had its drying time.
     *
     * @param washNeeded whether a roof without a recorded wash is washed first
     */
    public Optional<String> forbidsLooking(DryingClock clock, boolean washNeeded, Instant now) {
        if (stopped != null) {
            return Optional.of(stopped + " Begin the inspection again when it is safe.");
        }
        if (begun) {
            return Optional.empty();
        }
        InspectionStart start = start(clock, washNeeded, now, null);
        if (start instanceof InspectionStart.WashFirst first) {
            return Optional.of("The inspection waits: " + first.because());
        }
        if (start instanceof InspectionStart.TooEarly early) {
            return Optional.of("The inspection waits: the roof dries for "
                    + early.missing().toMinutes() + " more minutes; to begin early, give a reason");
        }
        return Optional.empty();
    }
}
