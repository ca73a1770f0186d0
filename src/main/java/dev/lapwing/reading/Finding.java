package dev.lapwing.reading;

import java.util.List;

/**
 * One thing that a note says about contact.
 *
 * @param sentence how to say it
 * @param weight of the case for contact, 0 to 1
 * @param event what happened
 * @param thing what it happened to or with, or null
 * @param signals all that belongs to it
 */
record Finding(Sentence sentence, double weight, Signal event, Signal thing, List<Signal> signals) {
    static final Finding NONE = new Finding(Sentence.NOTHING, 0, null, null, List.of());

    Finding with(List<Signal> more) {
        return new Finding(sentence, weight, event, thing, more);
    }
}
