package dev.lapwing.care;

import java.util.List;

/** Knows who can be given work at a depot. */
public interface TechRoster {
    /** Returns the techs of a depot in a fixed order; empty when it has none. */
    List<Tech> techsOf(String depotCode);
}
