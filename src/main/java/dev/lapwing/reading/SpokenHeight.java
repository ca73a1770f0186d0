package dev.lapwing.reading;

import java.util.Locale;

/** Reads heights written in words: "ten foot two", "dos metros noventa", "deux mètres quatre-vingt-quinze". */
final class SpokenHeight {
    private static final int MOST_UNITS = 20;
    private static final int MOST_NUMBERS = 4;

    private final Tokens tokens;
    private final Word[] words;
    private final int language;
    private final Vocabulary vocabulary;

    SpokenHeight(Tokens tokens, int language, Vocabulary vocabulary) {
        this.tokens = tokens;
        this.words = tokens.words[language];
        this.language = language;
        this.vocabulary = vocabulary;
    }

    /** Returns the height that starts with token i, or null when it is no number word before a unit of height. */
    Height at(int i) {
        double whole = number(i);
        if (!(whole >= 1 && whole <= MOST_UNITS) || i + 1 >= tokens.size) {
            return null;
        }
        String unit = tokens.written(i + 1).toLowerCase(Locale.ROOT);
        boolean foot = Height.isFoot(unit);
        if (!foot && !Height.isMetre(unit)) {
            return null;
        }
        int next = i + 2;
        double rest = 0;
        for (int read = 0; read < MOST_NUMBERS && next < tokens.size && joins(next); read++, next++) {
            rest = isNumber(next) ? added(rest, number(next)) : rest;
        }
        double part = rest < 1 ? rest : foot ? rest / Height.INCHES_IN_FOOT : rest / 100;
        double metres = (whole + Math.min(part, 1)) * (foot ? Height.FOOT : 1);
        return new Height(i, next, metres);
    }

    /** Returns the number that token i stands for, or NaN. */
    private double number(int i) {
        return i < tokens.size && words[i] != null ? vocabulary.number(language, words[i]) : Double.NaN;
    }

    private boolean isNumber(int i) {
        return !Double.isNaN(number(i));
    }

    /** A number goes on with a number, or with a little word ("y", "et", "and a") before one, but not over a break. */
    private boolean joins(int i) {
        boolean near = tokens.breakBefore[i] == Tokens.NO_BREAK;
        boolean little = near && i + 1 < tokens.size && tokens.end[i] - tokens.start[i] <= 3 && isNumber(i + 1);
        return near && (isNumber(i) || little && tokens.breakBefore[i + 1] == Tokens.NO_BREAK);
    }

    /** French counts eighty as four twenties. */
    private static double added(double before, double number) {
        return number == 20 && before == 4 ? 80 : before + number;
    }
}
