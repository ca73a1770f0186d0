package dev.lapwing.care;

import java.time.Instant;
import java.util.List;

/** Knows who can be given work at a depot. */
public interface TechRoster {
    /** Returns the techs of a depot in a fixed order; empty when it has none. */
    List<Tech> techsOf(String depotCode);

    /** Returns the techs on duty at a depot at an instant, in the order in which they are called; may be empty. */
    List<Tech> onDuty(String depotCode, Instant at);
}
