package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * A height named in a note.
 *
 * @param from first token
 * @param to token behind the last one
 * @param metres the height; 1 ft = 0.3048 m and 1 in = 0.0254 m exactly
 */
record Height(int from, int to, double metres) {
    static final double FOOT = 0.3048;
    static final int INCHES_IN_FOOT = 12;
    private static final double INCH = 0.0254;
    private static final double LOWEST = 1.6;
    private static final double HIGHEST = 6.5;
    /** A bare number with a decimal sign is taken for metres up to here. */
    private static final double HIGHEST_BARE = 4.7;

    /**
     * Finds all heights in feet, inches, metres and centimetres, in digits or words, that a roof might be measured
     * against.
     */
    static List<Height> allIn(Tokens tokens, SpokenHeight spoken) {
        List<Height> heights = new ArrayList<>();
        for (int i = 0; i < tokens.size; i++) {
            boolean digit = Character.isDigit(tokens.text.text().charAt(tokens.start[i]));
            Height height = digit ? at(tokens, i) : spoken.at(i);
            if (height != null && height.metres >= LOWEST && height.metres <= HIGHEST) {
                heights.add(height);
                i = height.to - 1;
            }
        }
        return heights;
    }

    private static Height at(Tokens tokens, int i) {
        String written = tokens.written(i).toLowerCase(Locale.ROOT);
        int digits = numberEnd(written, 0);
        double value = number(written.substring(0, digits));
        String rest = written.substring(digits);
        int next = i + 1;
        if (rest.isEmpty() && next < tokens.size && isUnit(tokens.written(next).toLowerCase(Locale.ROOT))) {
            rest = tokens.written(next).toLowerCase(Locale.ROOT);
            next++;
        } else if (rest.isEmpty() && mark(tokens, i) == '\'') {
            rest = "'";
        }
        boolean bare = rest.isEmpty() && digits >= 3 && written.indexOf('.') + written.indexOf(',') > -2;
        return bare && value >= LOWEST && value < HIGHEST_BARE
                ? new Height(i, i + 1, value)
                : inUnit(tokens, i, next, value, rest);
    }

    private static Height inUnit(Tokens tokens, int from, int next, double value, String rest) {
        int unitEnd = letterEnd(rest);
        String unit = rest.substring(0, unitEnd);
        String after = rest.substring(unitEnd);
        if (isMetre(unit)) {
            boolean apart = after.isEmpty() && value == Math.rint(value) && isTwoDigits(tokens, next);
            String cents = apart ? tokens.written(next) : after.substring(0, numberEnd(after, 0));
            return new Height(from, apart ? next + 1 : next, value + fraction(cents));
        }
        if (unit.equals("cm")) {
            return new Height(from, next, value / 100);
        }
        if (!isFoot(unit)) {
            return null;
        }
        if (!after.isEmpty()) {
            return new Height(from, next, value * FOOT + number(after.substring(0, numberEnd(after, 0))) * INCH);
        }
        return withInches(tokens, from, next, value * FOOT);
    }

    /** Reads the digits behind "3 m": one digit is tenths, two are hundredths. */
    private static double fraction(String digits) {
        return digits.isEmpty() ? 0 : number(digits) / (digits.length() == 1 ? 10 : 100);
    }

    private static boolean isTwoDigits(Tokens tokens, int i) {
        return i < tokens.size
                && tokens.end[i] - tokens.start[i] == 2
                && tokens.start[i] - tokens.end[i - 1] == 1
                && numberEnd(tokens.written(i), 0) == 2;
    }

    private static Height withInches(Tokens tokens, int from, int next, double metres) {
        if (next >= tokens.size || !Character.isDigit(tokens.text.text().charAt(tokens.start[next]))) {
            return new Height(from, next, metres);
        }
        String written = tokens.written(next).toLowerCase(Locale.ROOT);
        int digits = numberEnd(written, 0);
        double inches = number(written.substring(0, digits));
        boolean close = tokens.start[next] - tokens.end[next - 1] <= 2;
        boolean plain = digits == written.length() || written.startsWith("in", digits);
        return close && plain && inches < INCHES_IN_FOOT
                ? new Height(from, next + 1, metres + inches * INCH)
                : new Height(from, next, metres);
    }

    private static char mark(Tokens tokens, int i) {
        String text = tokens.text.text();
        int end = tokens.end[i];
        if (end >= text.length()) {
            return ' ';
        }
        char c = text.charAt(end);
        return c == '\u2019' || c == '\u2032' ? '\'' : c;
    }

    private static boolean isUnit(String word) {
        return isMetre(word) || isFoot(word) || word.equals("cm");
    }

    static boolean isMetre(String unit) {
        return switch (unit) {
            case "m",
                    "mt",
                    "mts",
                    "mtr",
                    "mtrs",
                    "metre",
                    "metres",
                    "meter",
                    "meters",
                    "mètre",
                    "mètres",
                    "metro",
                    "metros" -> true;
            default -> false;
        };
    }

    static boolean isFoot(String unit) {
        return switch (unit) {
            case "'", "\u2019", "ft", "foot", "feet", "pie", "pies", "pied", "pieds" -> true;
            default -> false;
        };
    }

    private static int numberEnd(String text, int from) {
        int i = from;
        while (i < text.length() && i < from + 6 && (isAsciiDigit(text.charAt(i)) || separates(text, i))) {
            i++;
        }
        return i;
    }

    private static boolean separates(String text, int i) {
        return (text.charAt(i) == '.' || text.charAt(i) == ',')
                && i > 0
                && i + 1 < text.length()
                && isAsciiDigit(text.charAt(i + 1));
    }

    private static boolean isAsciiDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static int letterEnd(String text) {
        int i = 0;
        while (i < text.length() && !Character.isDigit(text.charAt(i))) {
            i++;
        }
        return i;
    }

    private static double number(String digits) {
        String plain = digits.replace(',', '.');
        int second = plain.indexOf('.', plain.indexOf('.') + 1);
        String once = second > 0 ? plain.substring(0, second) : plain;
        return once.isEmpty() ? 0 : Double.parseDouble(once);
    }
}
