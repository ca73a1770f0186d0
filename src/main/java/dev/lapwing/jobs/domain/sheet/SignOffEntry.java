package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.FieldError;
import java.util.ArrayList;
import java.util.List;

/**
 * A sign-off as it was sent, before it is checked; any part may be null.
 *
 * @param by who signs
 * @param cautionsRead that the cautions were read
 * @param dryAtInspection whether the roof was dry when it was looked at
 * @param statement what the signer states in own words
 * @param seen how many entries the signer has seen on the sheet, or null when that was not counted
 */
public record SignOffEntry(String by, Boolean cautionsRead, Boolean dryAtInspection, String statement, Integer seen) {
    private static final int LONGEST_NAME = 100;
    /** A statement also stands on the hold that it ends. */
    private static final int LONGEST_STATEMENT = 2_000;

    /** A sign-off for which nobody counted the entries. */
    public SignOffEntry(String by, Boolean cautionsRead, Boolean dryAtInspection, String statement) {
        this(by, cautionsRead, dryAtInspection, statement, null);
    }

    /** Returns everything that keeps the sheet from being signed; empty when it can be. */
    public List<FieldError> check() {
        List<FieldError> errors = new ArrayList<>();
        if (by == null || by.isBlank()) {
            errors.add(new FieldError("by", "is needed: who signs"));
        } else if (by.length() > LONGEST_NAME || by.chars().anyMatch(Character::isISOControl)) {
            errors.add(new FieldError("by", "has at most " + LONGEST_NAME + " characters, no control characters"));
        }
        if (!Boolean.TRUE.equals(cautionsRead)) {
            errors.add(new FieldError("cautionsRead", "must be true: read the cautions before you sign"));
        }
        if (dryAtInspection == null) {
            errors.add(new FieldError("dryAtInspection", "is needed: true or false"));
        } else if (!dryAtInspection) {
            errors.add(new FieldError("dryAtInspection", "a roof is inspected dry: let it dry and look again"));
        }
        if (statement == null || statement.isBlank()) {
            errors.add(new FieldError("statement", "is needed: what you state with your signature"));
        } else if (statement.length() > LONGEST_STATEMENT) {
            errors.add(new FieldError("statement", "has at most " + LONGEST_STATEMENT + " characters"));
        } else if (statement.indexOf('\0') >= 0) {
            errors.add(new FieldError("statement", "must not hold a NUL character"));
        }
        return errors;
    }
}
