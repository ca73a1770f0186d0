package dev.lapwing.jobs.domain.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * A volume, not negative, kept in millilitres without rounding. One US fluid ounce is 29.5735295625 mL, exact: 231
 * cubic inches make 128 fluid ounces.
 */
public record Volume(BigDecimal millilitres) implements Comparable<Volume> {
    private static final BigDecimal MILLILITRES_PER_US_FLUID_OUNCE = new BigDecimal("29.5735295625");
    private static final int DIVISION_DIGITS = 12;

    public Volume {
        if (millilitres.signum() < 0) {
            throw new IllegalArgumentException("a volume is not negative, was " + millilitres + " mL");
        }
        millilitres = millilitres.signum() == 0 ? BigDecimal.ZERO : millilitres.stripTrailingZeros();
    }

    public static Volume ofMillilitres(double millilitres) {
        return new Volume(BigDecimal.valueOf(millilitres));
    }

    public static Volume ofUsFluidOunces(double ounces) {
        return new Volume(BigDecimal.valueOf(ounces).multiply(MILLILITRES_PER_US_FLUID_OUNCE));
    }

    /** Returns the volume of a straight bead of rectangular section. */
    public static Volume ofBead(Length length, Length width, Length height) {
        BigDecimal cubicMillimetres =
                length.millimetres().multiply(width.millimetres()).multiply(height.millimetres());
        return new Volume(cubicMillimetres.movePointLeft(3));
    }

    /** Returns the volume in US fluid ounces, to twelve decimals. */
    public BigDecimal usFluidOunces() {
        return millilitres.divide(MILLILITRES_PER_US_FLUID_OUNCE, DIVISION_DIGITS, RoundingMode.HALF_EVEN);
    }

    @Override
    public int compareTo(Volume other) {
        return millilitres.compareTo(other.millilitres);
    }
}
