package dev.lapwing.use.domain;

import java.time.LocalDate;
import java.util.Objects;

/**
 * The use pattern that counts for a unit.
 *
 * @param pattern the pattern
 * @param since first local day on which care by this pattern applied, null when it always did; unknown and full-time
 *     are cared for alike, so passing from one to the other keeps the day
 * @param why one plain clause that says where the pattern comes from
 */
public record UseInForce(UsePattern pattern, LocalDate since, String why) {
    public UseInForce {
        Objects.requireNonNull(pattern, "pattern");
        Objects.requireNonNull(why, "why");
    }
}
