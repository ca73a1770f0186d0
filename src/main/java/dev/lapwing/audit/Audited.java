package dev.lapwing.audit;

import java.util.UUID;

/**
 * Something that changed.
 *
 * @param unitId the unit it is about, or null when it is about none
 * @param what what kind of thing changed, in a few words such as "hold" or "task: touch-up"; at most 60 characters
 * @param area the area that owns it, such as {@code care}
 * @param subject id of the thing within the area
 * @param was what it was before, or null when it is new
 * @param became what it is now, or null when it is gone
 */
public record Audited(UUID unitId, String what, String area, String subject, String was, String became) {
    /** Returns a thing that was not there before. */
    public static Audited added(UUID unitId, String what, String area, UUID subject, String became) {
        return new Audited(unitId, what, area, subject.toString(), null, became);
    }

    /** Returns a thing that was something else before. */
    public static Audited of(UUID unitId, String what, String area, UUID subject, String was, String became) {
        return new Audited(unitId, what, area, subject.toString(), was, became);
    }
}
