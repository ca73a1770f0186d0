package dev.lapwing.returns.application;

import dev.lapwing.platform.FieldErrors;

/**
 * What a person says about a note.
 *
 * @param contact whether something overhead touched the roof
 * @param by who says so
 * @param why what that rests on
 */
public record DeskAnswer(Boolean contact, String by, String why) {
    /** Refuses an answer with a field missing or too long. */
    void check() {
        var errors = new FieldErrors();
        errors.present(contact, "contact");
        if (errors.present(by, "by")) {
            errors.atMost(by, 100, "by");
        }
        if (errors.present(why, "why")) {
            errors.atMost(why, 2000, "why");
        }
        errors.refuseIfAny();
    }
}
