package dev.lapwing.jobs.domain.finding;

import dev.lapwing.jobs.domain.roof.Point;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One observation in one zone of the roof plan. Made by {@link FindingEntry#check()}, which refuses wrong entries.
 *
 * @param zone name of the zone, such as {@code front-left}
 * @param depth null when not recorded; always there for a crack
 * @param extent null when not recorded; always there for adhesion
 * @param lengthCm length in centimetres, more than 0, or null when not recorded
 * @param note empty when there is none
 * @param at the place on the plan, or null when only the zone was named
 */
public record Finding(
        String zone, FindingKind kind, Depth depth, Extent extent, Double lengthCm, String note, Point at) {
    public Finding {
        if (kind == FindingKind.CRACK && depth == null) {
            throw new IllegalArgumentException("a crack has a depth");
        }
        if (kind == FindingKind.ADHESION && extent == null) {
            throw new IllegalArgumentException("an adhesion finding has an extent");
        }
    }

    /** A finding of which only the zone is known. */
    public Finding(String zone, FindingKind kind, Depth depth, Extent extent, Double lengthCm, String note) {
        this(zone, kind, depth, extent, lengthCm, note, null);
    }

    public Optional<Double> length() {
        return Optional.ofNullable(lengthCm);
    }

    /** Returns whether what was tested sits firmly. */
    public boolean holds() {
        return extent == Extent.HOLDS;
    }

    /** Returns the finding in a few words, such as "crack, deep, in front-left, 12 cm". */
    public String inWords() {
        StringBuilder words = new StringBuilder(kind.word().replace('-', ' '));
        if (depth != null) {
            words.append(", ").append(depth.word());
        }
        if (extent != null) {
            words.append(", ").append(extent.word().replace('-', ' '));
        }
        words.append(", in ").append(zone);
        length().ifPresent(cm -> words.append(", ").append(plain(cm)).append(" cm"));
        return words.toString();
    }

    private static String plain(double value) {
        return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    }
}
