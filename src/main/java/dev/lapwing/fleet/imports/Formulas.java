package dev.lapwing.fleet.imports;

import java.util.regex.Pattern;

/**
 * Keeps spreadsheet programs from running a cell as a formula: a cell that begins like one goes out with an apostrophe
 * before it and loses it when it comes back. A cell that begins with apostrophes before such a sign gets one more, so
 * that every text comes back as it was.
 */
final class Formulas {
    private static final Pattern LIKE_A_FORMULA = Pattern.compile("^'*[=+\\-@\\t\\r]");
    private static final Pattern GUARDED = Pattern.compile("^'+[=+\\-@\\t\\r]");

    private Formulas() {}

    static String guard(String cell) {
        return LIKE_A_FORMULA.matcher(cell).find() ? "'" + cell : cell;
    }

    static String unguard(String cell) {
        return GUARDED.matcher(cell).find() ? cell.substring(1) : cell;
    }
}
