package dev.lapwing.fleet;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * The vehicle identification number and its check digit (49 CFR 565.15(c); scheme of ISO 3779).
 *
 * <p>Many vehicles built for other markets carry no check digit, so a mismatch only warns of a copying error.
 */
public final class Vin {
    private static final Pattern FORM = Pattern.compile("[A-HJ-NPR-Z0-9]{17}");
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUVWXYZ";
    private static final String LETTER_VALUES = "12345678123457923456789";
    private static final int[] WEIGHTS = {8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2};
    private static final int CHECK_POSITION = 8;

    private Vin() {}

    /** Returns a VIN as it is stored: upper case, no spaces. */
    public static String normalised(String typed) {
        return typed.replaceAll("\\s", "").toUpperCase(Locale.ROOT);
    }

    /** Returns whether a normalised VIN has the form and the check digit of the scheme. */
    public static boolean isValid(String vin) {
        return FORM.matcher(vin).matches() && vin.charAt(CHECK_POSITION) == checkDigit(vin);
    }

    /** Returns what looks wrong with a normalised VIN, or empty. */
    public static Optional<String> warning(String vin) {
        if (isValid(vin)) {
            return Optional.empty();
        }
        if (!FORM.matcher(vin).matches()) {
            return Optional.of("A VIN has 17 letters and digits, without I, O and Q; check it against the plate");
        }
        return Optional.of("The check digit does not match: a copying error, or a vehicle built without one");
    }

    private static char checkDigit(String vin) {
        int sum = 0;
        for (int i = 0; i < WEIGHTS.length; i++) {
            sum += WEIGHTS[i] * value(vin.charAt(i));
        }
        return sum % 11 == 10 ? 'X' : (char) ('0' + sum % 11);
    }

    private static int value(char c) {
        int letter = LETTERS.indexOf(c);
        return letter < 0 ? c - '0' : LETTER_VALUES.charAt(letter) - '0';
    }
}
