package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.Words;

/** The steps of the sheet in the order of the work. */
public enum SheetStep {
    CAUTIONS,
    ROOF_FACTS,
    CLEAR_AND_WASH,
    DRY,
    LOOK_AND_FEEL,
    FINDINGS,
    PHOTOS,
    SIGN_OFF;

    public String word() {
        return Words.of(this);
    }
}
