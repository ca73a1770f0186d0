package dev.lapwing.jobs.application;

import dev.lapwing.platform.FieldErrors;

/** Checks and trims what people say on a sheet. */
final class SheetWords {
    static final int LONGEST = 1000;

    private SheetWords() {}

    /** Refuses words that are too long or hold a NUL character; null and blank ones are fine. */
    static void refuseLong(String words, String field) {
        var errors = new FieldErrors();
        checkLong(errors, words, LONGEST, field);
        errors.refuseIfAny();
    }

    /** Notes an error when words are missing, too long, or hold a NUL character. */
    static void checkNeeded(FieldErrors errors, String words, int most, String field) {
        if (errors.present(words, field)) {
            checkLong(errors, words, most, field);
        }
    }

    /** Notes an error when words are too long or hold a NUL character. */
    static void checkLong(FieldErrors errors, String words, int most, String field) {
        errors.atMost(words, most, field);
        errors.check(words == null || words.indexOf('\0') < 0, field, "holds a NUL character");
    }

    /** Returns the words without blanks around them; null becomes empty. */
    static String plain(String words) {
        return words == null ? "" : words.strip();
    }
}
