package dev.lapwing.care.domain;

import dev.lapwing.platform.Worded;

/** What is done in one piece of roof work. */
public enum TaskKind implements Worded {
    WASH("wash", "wash"),
    /** Wash, let dry, inspect. */
    INSPECTION("inspection", "wash with inspection"),
    STRIKE_INSPECTION("strike inspection", "strike inspection"),
    TOUCH_UP("touch-up", "touch-up"),
    REWORK("rework", "rework"),
    SEALANT_REPLACEMENT("sealant replacement", "sealant replacement"),
    MEMBRANE_REPAIR("membrane repair", "membrane repair"),
    /** Ask the dealer or maker which membrane system the roof has; nobody goes up for it. */
    CONFIRM_MEMBRANE("confirm membrane", "membrane system confirmation");

    private final String word;
    private final String label;

    TaskKind(String word, String label) {
        this.word = word;
        this.label = label;
    }

    @Override
    public String word() {
        return word;
    }

    /** Returns the name as it stands in a sentence. */
    public String label() {
        return label;
    }

    /** Returns whether somebody works at height for it. */
    public boolean onTheRoof() {
        return this != CONFIRM_MEMBRANE;
    }

    /** Returns whether the whole roof is looked at. */
    public boolean fullInspection() {
        return this == INSPECTION || this == STRIKE_INSPECTION;
    }

    /** Returns whether doing this work also does the routine work of the other kind. */
    boolean serves(TaskKind routine) {
        boolean inspects = routine == INSPECTION && fullInspection();
        boolean washes = routine == WASH && this == INSPECTION;
        return this == routine || inspects || washes;
    }
}
