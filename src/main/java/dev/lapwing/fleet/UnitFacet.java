package dev.lapwing.fleet;

import java.util.Collection;
import java.util.Map;
import java.util.UUID;

/** What another area adds to a unit's answer, such as its use or its next due work. */
public interface UnitFacet {
    /** Name of the field in the answer. */
    String name();

    /** Returns the value per unit, read for all of them at once; a unit without one is left out. */
    Map<UUID, Object> valuesOf(Collection<UUID> unitIds);
}
