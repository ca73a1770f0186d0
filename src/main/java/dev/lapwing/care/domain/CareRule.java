package dev.lapwing.care.domain;

import dev.lapwing.use.domain.UsePattern;
import java.time.Duration;
import java.util.Objects;

/** One care rule. Days are whole local days of the unit's depot. */
public sealed interface CareRule {
    RuleRef ref();

    /** Returns where the rule comes from: a source, or that it is common practice or a project default without one. */
    String source();

    /**
     * Work that returns after a span, counted from the last date done.
     *
     * @param kind wash or inspection
     * @param pattern full-time (unknown is cared for alike) or seasonal
     * @param opensBefore days before the due day on which doing it counts as on time
     * @param lateAfter days after the due day on which it is not yet late
     */
    record Interval(
            RuleRef ref,
            String source,
            TaskKind kind,
            UsePattern pattern,
            Every every,
            int opensBefore,
            int lateAfter,
            Conditions when)
            implements CareRule {}

    /**
     * Inspection at the opening of the season: due on the opening day, or on the day before the first rental if the unit
     * goes out earlier.
     *
     * @param earlyRentalDays a rental that starts so many days before the opening counts as the first of the season
     */
    record Opening(RuleRef ref, String source, int earlyRentalDays, int opensBefore, int lateAfter)
            implements CareRule {}

    /**
     * Inspection at the closing of the season: due some days after the last return or the closing day, whichever is
     * first.
     *
     * @param within those days
     * @param lastReturnDays a return is taken for the last only in so many last days of the season, with nothing booked
     */
    record Closing(RuleRef ref, String source, int within, int lastReturnDays, int opensBefore, int lateAfter)
            implements CareRule {}

    /**
     * Inspection of a unit new to the fleet or long away, before its first rental.
     *
     * @param awayLongerThan days away after which the unit counts as new
     * @param within days after the first day in service, if no rental starts earlier
     */
    record Intake(RuleRef ref, String source, int awayLongerThan, int within, int lateAfter) implements CareRule {}

    /**
     * Inspection after something happened to the roof.
     *
     * @param event strike, water inside, storm or part lost
     * @param kind inspection or strike inspection
     * @param within time from the report to the due instant; zero is at once
     */
    record Event(RuleRef ref, String source, TaskOrigin event, TaskKind kind, Duration within, Conditions when)
            implements CareRule {
        public Event {
            Objects.requireNonNull(within, "within");
        }
    }
}
