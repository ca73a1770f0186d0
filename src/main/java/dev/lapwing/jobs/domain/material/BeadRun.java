package dev.lapwing.jobs.domain.material;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.measure.Length;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;

/**
 * Where sealant is to be laid.
 *
 * @param parts each stretch
 * @param notCounted findings whose material the membrane's maker prescribes, such as a patch on a tear
 */
public record BeadRun(List<Part> parts, List<Finding> notCounted) {
    private static final int PLACES_IN_SEVERAL = 3;

    public BeadRun {
        parts = List.copyOf(parts);
        notCounted = List.copyOf(notCounted);
    }

    /**
     * One stretch of bead.
     *
     * @param what where it is, in words
     * @param measured whether the length was recorded, or a default was taken
     */
    public record Part(String what, Length length, boolean measured) {}

    /** Collects the bead that findings ask for; several unmeasured places count three times the default length. */
    public static BeadRun of(List<Finding> findings, BeadSettings settings) {
        List<Part> parts = new ArrayList<>();
        List<Finding> patches = new ArrayList<>();
        for (Finding finding : findings) {
            switch (finding.kind()) {
                case TEAR, PUNCTURE -> patches.add(finding);
                case VOID -> parts.add(part(finding, settings));
                case CRACK -> {
                    if (finding.depth() == Depth.DEEP) {
                        parts.add(part(finding, settings));
                    }
                }
                case ADHESION, ATTACHMENT -> {
                    if (!finding.holds()) {
                        parts.add(part(finding, settings));
                    }
                }
                case DIRT, CHALKING, SOFT_SPOT -> {
                    // no bead mends these
                }
            }
        }
        return new BeadRun(parts, patches);
    }

    private static Part part(Finding finding, BeadSettings settings) {
        return finding.length()
                .map(cm -> new Part(finding.inWords(), Length.ofCentimetres(cm), true))
                .orElseGet(() -> new Part(finding.inWords(), unmeasured(finding, settings), false));
    }

    private static Length unmeasured(Finding finding, BeadSettings settings) {
        boolean several = finding.extent() == Extent.SEVERAL || finding.extent() == Extent.LOOSE_IN_SEVERAL;
        BigDecimal places = BigDecimal.valueOf(several ? PLACES_IN_SEVERAL : 1);
        return new Length(settings.whenUnmeasured().metres().multiply(places));
    }

    /** Returns the length of all stretches together. */
    public Length length() {
        return parts.stream().map(Part::length).reduce(Length.ofMetres(0), Length::plus);
    }
}
