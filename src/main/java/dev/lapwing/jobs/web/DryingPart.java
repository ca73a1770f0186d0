package dev.lapwing.jobs.web;

import java.util.List;
import java.util.UUID;

/**
 * How a roof dries.
 *
 * @param open whether the person who looks at it can note something
 * @param standing how far it is, in one sentence
 * @param stopped why nobody goes up, or null
 * @param early whether to begin now would be to begin early
 * @param events what was noted before anyone looked at the roof, oldest first
 */
public record DryingPart(UUID id, boolean open, String standing, String stopped, boolean early, List<Line> events) {

    /** One thing that was noted, with who noted it when. */
    public record Line(String when, String who, String words) {}
}
