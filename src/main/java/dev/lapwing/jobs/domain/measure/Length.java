package dev.lapwing.jobs.domain.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A length, not negative, kept in metres without rounding. One foot is 0.3048 m and one inch 0.0254 m, both exact
 * (international yard and pound, 1959).
 */
public record Length(BigDecimal metres) implements Comparable<Length> {
    private static final BigDecimal METRES_PER_INCH = new BigDecimal("0.0254");
    private static final BigDecimal METRES_PER_FOOT = new BigDecimal("0.3048");
    private static final int INCHES_PER_FOOT = 12;
    private static final int DIVISION_DIGITS = 12;

    public Length {
        if (metres.signum() < 0) {
            throw new IllegalArgumentException("a length is not negative, was " + metres + " m");
        }
        metres = metres.signum() == 0 ? BigDecimal.ZERO : metres.stripTrailingZeros();
    }

    public static Length ofMetres(double metres) {
        return new Length(BigDecimal.valueOf(metres));
    }

    public static Length ofCentimetres(double centimetres) {
        return new Length(BigDecimal.valueOf(centimetres).movePointLeft(2));
    }

    public static Length ofMillimetres(double millimetres) {
        return new Length(BigDecimal.valueOf(millimetres).movePointLeft(3));
    }

    public static Length ofFeet(double feet) {
        return new Length(BigDecimal.valueOf(feet).multiply(METRES_PER_FOOT));
    }

    public static Length ofInches(double inches) {
        return new Length(BigDecimal.valueOf(inches).multiply(METRES_PER_INCH));
    }

    public static Length ofFeetAndInches(int feet, int inches) {
        return ofFeet(feet).plus(ofInches(inches));
    }

    public Length plus(Length other) {
        return new Length(metres.add(other.metres));
    }

    public BigDecimal centimetres() {
        return metres.movePointRight(2);
    }

    public BigDecimal millimetres() {
        return metres.movePointRight(3);
    }

    /** Returns the length in feet, to twelve decimals. */
    public BigDecimal feet() {
        return metres.divide(METRES_PER_FOOT, DIVISION_DIGITS, RoundingMode.HALF_EVEN);
    }

    /** Returns the length in inches, to twelve decimals. */
    public BigDecimal inches() {
        return metres.divide(METRES_PER_INCH, DIVISION_DIGITS, RoundingMode.HALF_EVEN);
    }

    /** Returns whole feet and inches, such as "11 ft 6 in"; the caller says which way a part of an inch goes. */
    public String feetAndInches(RoundingMode rounding) {
        int total = metres.divide(METRES_PER_INCH, 0, rounding).intValueExact();
        return total / INCHES_PER_FOOT + " ft " + total % INCHES_PER_FOOT + " in";
    }

    /** Returns both units, such as "3.51 m (11 ft 7 in)", each rounded up: for what must be long or high enough. */
    public String atLeast() {
        return both(RoundingMode.CEILING);
    }

    /** Returns both units, such as "0.91 m (3 ft 0 in)", each rounded to the nearest. */
    public String about() {
        return both(RoundingMode.HALF_UP);
    }

    private String both(RoundingMode rounding) {
        return metres.setScale(2, rounding).toPlainString() + " m (" + feetAndInches(rounding) + ")";
    }

    @Override
    public int compareTo(Length other) {
        return metres.compareTo(other.metres);
    }
}
