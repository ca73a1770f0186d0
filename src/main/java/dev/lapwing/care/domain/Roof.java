package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.Objects;

/**
 * What care rules look at on a roof.
 *
 * @param surface word of the surface, such as {@code epdm}
 * @param footing word of the footing; it decides how work is done, not when
 * @param installedOn day the roof was put on, null if not known
 * @param storedOutside whether the unit stands outside between rentals
 * @param underTrees whether it stands under trees
 */
public record Roof(String surface, String footing, LocalDate installedOn, boolean storedOutside, boolean underTrees) {
    public Roof {
        Objects.requireNonNull(surface, "surface");
        Objects.requireNonNull(footing, "footing");
    }
}
