package dev.lapwing.jobs.domain.ladder;

import dev.lapwing.jobs.domain.measure.Length;
import java.util.List;

/**
 * Set-up of a leaning ladder: the foot stands a quarter of the working length out (29 CFR 1926.1053(b)(5)(i)), and the
 * side rails reach three feet above the landing (29 CFR 1926.1053(b)(1)). The working length is the distance along the
 * ladder from its foot to its top support, not the height. Practice for work instructions; local rules come first.
 *
 * @param landing height of the top support above the ground
 * @param workingLength along the ladder from foot to top support
 * @param baseOffset horizontal distance from foot to top support
 * @param railLength least length of the side rails, foot to tip
 */
public record LadderSetup(Length landing, Length workingLength, Length baseOffset, Length railLength) {
    /** Part of the working length that the foot stands out. */
    private static final double OFFSET_RATIO = 0.25;
    /** Height reached by each unit of working length. */
    private static final double RISE = Math.sqrt(1 - OFFSET_RATIO * OFFSET_RATIO);

    private static final Length ABOVE_LANDING = Length.ofFeet(3);

    /**
     * Returns the set-up for a roof edge at a height. The travel height of a unit may stand in for it: it is never lower
     * than the roof, so the ladder is never too short.
     */
    public static LadderSetup forLanding(Length landing) {
        double working = landing.metres().doubleValue() / RISE;
        return at(landing, working);
    }

    /** Returns the set-up that a working length gives. */
    public static LadderSetup forWorkingLength(Length workingLength) {
        double working = workingLength.metres().doubleValue();
        return at(Length.ofMetres(working * RISE), working);
    }

    private static LadderSetup at(Length landing, double working) {
        double rails = working + ABOVE_LANDING.metres().doubleValue() / RISE;
        return new LadderSetup(
                landing, Length.ofMetres(working), Length.ofMetres(working * OFFSET_RATIO), Length.ofMetres(rails));
    }

    /** Returns the angle between ladder and ground in degrees; the same for every height. */
    public static double angleDegrees() {
        return Math.toDegrees(Math.acos(OFFSET_RATIO));
    }

    /** Returns the set-up as lines for the sheet, each figure in both units. */
    public List<String> lines() {
        return List.of(
                "Roof edge at " + landing.atLeast() + ": working length along the ladder " + workingLength.about()
                        + ".",
                "Foot of the ladder a quarter of that out from the edge: " + baseOffset.about() + ".",
                "Rails three feet (0.91 m) above the edge: a ladder of at least " + railLength.atLeast() + ".",
                "Too short? Take another ladder, or do not go up.");
    }
}
