package dev.lapwing.reading;

/**
 * Tells whether two words are one slip of the finger apart (Damerau's four kinds). The shorter the word meant, the fewer
 * slips are believed: in four letters only a doubled one, in five no other letter.
 */
final class Slip {
    private Slip() {}

    private static final int SHORT = 4;
    private static final int LONG = 6;

    static boolean isOne(String typed, String meant) {
        int difference = typed.length() - meant.length();
        if (Math.abs(difference) > 1 || meant.length() <= SHORT && difference != 1) {
            return false;
        }
        int i = 0;
        int shorter = Math.min(typed.length(), meant.length());
        while (i < shorter && typed.charAt(i) == meant.charAt(i)) {
            i++;
        }
        return switch (difference) {
            case 1 ->
                same(typed, i + 1, meant, i)
                        && (meant.length() > SHORT || i > 0 && typed.charAt(i) == typed.charAt(i - 1));
            case -1 -> same(typed, i, meant, i + 1);
            default -> meant.length() >= LONG && same(typed, i + 1, meant, i + 1) || changedAbout(typed, meant, i);
        };
    }

    private static boolean changedAbout(String typed, String meant, int i) {
        return i + 1 < typed.length()
                && typed.charAt(i) == meant.charAt(i + 1)
                && typed.charAt(i + 1) == meant.charAt(i)
                && same(typed, i + 2, meant, i + 2);
    }

    private static boolean same(String a, int fromA, String b, int fromB) {
        if (fromA >= a.length() || fromB >= b.length()) {
            return fromA >= a.length() && fromB >= b.length();
        }
        return a.regionMatches(fromA, b, fromB, Math.max(a.length() - fromA, b.length() - fromB));
    }
}
