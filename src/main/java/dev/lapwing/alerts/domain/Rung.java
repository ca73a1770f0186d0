package dev.lapwing.alerts.domain;

import dev.lapwing.platform.Worded;

/** One rung of the ladder that a strike climbs while nobody has it. The order is the order of climbing. */
public enum Rung implements Worded {
    /** The tech who was given the inspection, and the coordinators of the depot. */
    TOLD("tech and coordinators"),
    /** The next on the duty rota, and the return desk. */
    NEXT_ON_DUTY("next on duty and desk"),
    /** Every coordinator of the depot. */
    COORDINATORS("every coordinator"),
    /** The address that the fleet keeps for this; again and again. */
    LAST_RESORT("escalation address");

    private final String word;

    Rung(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
