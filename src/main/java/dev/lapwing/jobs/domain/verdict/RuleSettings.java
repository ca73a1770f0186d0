package dev.lapwing.jobs.domain.verdict;

import java.time.Duration;

/**
 * The figures of the rule table.
 *
 * @param rainNear rain expected within this time counts as near
 * @param goesOutNear a departure within this time counts as near
 * @param unknownRainIsNear whether no forecast counts as rain near
 * @param replaceFromZones from how many zones with sealant loose in several places it is replaced
 * @param routineWithin how long routine follow-up may take
 * @param urgentWithin how long urgent follow-up may take at most
 */
public record RuleSettings(
        Duration rainNear,
        Duration goesOutNear,
        boolean unknownRainIsNear,
        int replaceFromZones,
        Duration routineWithin,
        Duration urgentWithin) {
    /** The project's defaults; no source. An operator may be stricter than each of them, never milder. */
    public static final RuleSettings DEFAULTS = new RuleSettings(
            Duration.ofHours(48), Duration.ofDays(14), false, 3, Duration.ofDays(14), Duration.ofHours(72));
}
