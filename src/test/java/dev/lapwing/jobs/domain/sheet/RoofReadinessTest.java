package dev.lapwing.jobs.domain.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A roof is looked at clean, dry and in calm weather. Common practice, no source; four hours are the project's own. */
class RoofReadinessTest {
    private static final DryingClock CLOCK = new DryingClock(Duration.ofHours(4));
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00Z");

    @Test
    void aRoofThatNobodyWashedOrCalledDirtyIsLookedAt() {
        assertThat(after().forbidsLooking(CLOCK, false, NOON)).isEmpty();
    }

    @Test
    void aHouseThatWantsEveryRoofWashedFirstGetsThat() {
        assertThat(after().forbidsLooking(CLOCK, true, NOON))
                .hasValueSatisfying(why -> assertThat(why).contains("the wash is not recorded"));
    }

    @Test
    void dirtBlocksUntilAWashAndTheWashUntilTheRoofIsDry() {
        var dirty = after(SheetEventKind.TOO_DIRTY);
        var washed = after(SheetEventKind.TOO_DIRTY, SheetEventKind.WASHED);

        assertThat(dirty.forbidsLooking(CLOCK, false, NOON.plus(Duration.ofDays(1))))
                .isPresent();
        assertThat(washed.forbidsLooking(
                        CLOCK, false, NOON.plus(Duration.ofHours(4)).minusSeconds(1)))
                .isPresent();
        assertThat(washed.forbidsLooking(CLOCK, false, NOON.plus(Duration.ofHours(4))))
                .isEmpty();
    }

    @Test
    void anEarlyStartOpensTheSheetUntilTheRoofIsCalledDirtyOrWashedAgain() {
        assertThat(after(SheetEventKind.WASHED, SheetEventKind.BEGUN_EARLY).forbidsLooking(CLOCK, false, NOON))
                .isEmpty();
        assertThat(after(SheetEventKind.WASHED, SheetEventKind.BEGUN_EARLY, SheetEventKind.TOO_DIRTY)
                        .forbidsLooking(CLOCK, false, NOON))
                .isPresent();
        assertThat(after(SheetEventKind.WASHED, SheetEventKind.BEGUN_EARLY, SheetEventKind.WASHED)
                        .forbidsLooking(CLOCK, false, NOON))
                .isPresent();
    }

    @Test
    void aStopHoldsUntilTheInspectionIsBegunAgain() {
        var stopped = after(SheetEventKind.BEGUN, SheetEventKind.STOPPED);

        assertThat(stopped.forbidsLooking(CLOCK, false, NOON)).isPresent();
        assertThat(after(SheetEventKind.BEGUN, SheetEventKind.STOPPED, SheetEventKind.BEGUN)
                        .forbidsLooking(CLOCK, false, NOON))
                .isEmpty();
    }

    private static RoofReadiness after(SheetEventKind... kinds) {
        List<SheetEvent> events = Stream.of(kinds)
                .map(kind -> new SheetEvent(kind, null, "It is windy: stop.", NOON))
                .toList();
        return RoofReadiness.after(events);
    }
}
