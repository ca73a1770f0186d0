package dev.lapwing.jobs.domain.sealant;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Decides whether a sealant may be put on a roof. Common practice, no source: a sealant goes only with its own membrane
 * system, and does not hold on a chalking surface.
 *
 * @param membrane what is recorded of the roof
 * @param chalkingUntreated whether chalking was found and not yet treated and tested
 * @param today the depot's date
 */
public record SealantGuard(Membrane membrane, boolean chalkingUntreated, LocalDate today) {
    /**
     * Answers for one sealant.
     *
     * @param overrule the coordinator's confirmation, used when the recorded one is missing; may be null
     */
    public SealantAnswer mayUse(Sealant sealant, Overrule overrule) {
        Optional<String> missing = membrane.whatIsMissing(today);
        if (missing.isPresent() && overrule == null) {
            return confirmFirst(missing.get());
        }
        String system = missing.isPresent() ? overrule.system() : membrane.system();
        if (!sealant.belongsTo(system)) {
            return new SealantAnswer.WrongSystem(sealant.name() + " belongs to " + sealant.membraneSystem()
                    + ", this roof is " + system + ": use only sealant of the roof's own system");
        }
        if (chalkingUntreated) {
            return treatFirst();
        }
        return new SealantAnswer.Allowed(sealant.name() + " belongs to this roof's system, confirmed by "
                + (missing.isPresent()
                        ? overrule.source() + ", on the word of " + overrule.coordinator()
                        : membrane.confirmedBy() + " on " + membrane.confirmedOn()));
    }

    /** Returns all that must come before sealant of any kind is put on, in the order in which it is done. */
    public List<SealantAnswer> comesFirst(Overrule overrule) {
        List<SealantAnswer> first = new ArrayList<>();
        if (overrule == null) {
            membrane.whatIsMissing(today).map(SealantGuard::confirmFirst).ifPresent(first::add);
        }
        if (chalkingUntreated) {
            first.add(treatFirst());
        }
        return first;
    }

    private static SealantAnswer confirmFirst(String missing) {
        return new SealantAnswer.ConfirmFirst(missing + ": confirm the membrane system with the dealer or maker first");
    }

    private static SealantAnswer treatFirst() {
        return new SealantAnswer.TreatFirst(
                "the surface chalks: treat it and test that sealant holds before any sealant work");
    }
}
