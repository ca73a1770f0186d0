package dev.lapwing.jobs.domain.finding;

import dev.lapwing.jobs.domain.Words;
import java.util.EnumSet;
import java.util.Set;

/** What kind of thing was found. */
public enum FindingKind {
    /** Dirt or growth that is on the roof. */
    DIRT,
    /** White powder on the hand after rubbing the membrane. */
    CHALKING,
    /** A crack in the sealant; its depth decides. */
    CRACK,
    /** A hole or gap in the sealant. */
    VOID,
    /** The edge of the sealant picked with a finger: holds, or loose. */
    ADHESION,
    /** The membrane is torn. */
    TEAR,
    /** The membrane is pierced. */
    PUNCTURE,
    /** The roof gives way under the hand: the deck beneath may be wet or rotten. */
    SOFT_SPOT,
    /** Something mounted on the roof, and whether it sits firmly. */
    ATTACHMENT;

    /** Returns the word used in the HTTP contract, such as {@code soft-spot}. */
    public String word() {
        return Words.of(this);
    }

    /** Returns the extents that make sense for this kind. */
    Set<Extent> extents() {
        return switch (this) {
            case ADHESION -> EnumSet.of(Extent.HOLDS, Extent.LOOSE_HERE, Extent.LOOSE_IN_SEVERAL);
            case ATTACHMENT -> EnumSet.allOf(Extent.class);
            default -> EnumSet.of(Extent.ONE, Extent.SEVERAL);
        };
    }
}
