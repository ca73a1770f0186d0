package dev.lapwing.jobs.domain.material;

import dev.lapwing.jobs.domain.measure.Length;
import java.math.BigDecimal;

/**
 * How a bead is laid in this house.
 *
 * @param width across the seam, more than 0
 * @param height above the roof, more than 0
 * @param wastePercent added for what stays in tube and nozzle, 0 to 100
 * @param whenUnmeasured taken for a place whose length was not recorded, more than 0
 */
public record BeadSettings(Length width, Length height, int wastePercent, Length whenUnmeasured) {
    /** The project's defaults; no source. */
    public static final BeadSettings DEFAULTS =
            new BeadSettings(Length.ofMillimetres(25), Length.ofMillimetres(6), 15, Length.ofCentimetres(30));

    public BeadSettings {
        requirePositive("width of the bead", width);
        requirePositive("height of the bead", height);
        requirePositive("length of an unmeasured place", whenUnmeasured);
        if (wastePercent < 0 || wastePercent > 100) {
            throw new IllegalArgumentException("the waste allowance is 0 to 100 %, was " + wastePercent);
        }
    }

    private static void requirePositive(String what, Length length) {
        if (length.metres().signum() == 0) {
            throw new IllegalArgumentException("the " + what + " is more than 0");
        }
    }

    BigDecimal wasteFactor() {
        return BigDecimal.valueOf(100L + wastePercent, 2);
    }
}
