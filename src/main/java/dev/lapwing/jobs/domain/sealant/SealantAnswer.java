package dev.lapwing.jobs.domain.sealant;

/** Whether a sealant may be put on a roof. */
public sealed interface SealantAnswer {
    /** Says why, in one sentence. */
    String because();

    /** It may. */
    record Allowed(String because) implements SealantAnswer {}

    /** The membrane system must be confirmed with the dealer or maker first. */
    record ConfirmFirst(String because) implements SealantAnswer {}

    /** The chalking surface must be treated, and a test must have held, first. */
    record TreatFirst(String because) implements SealantAnswer {}

    /** Never on this roof: it belongs to another system. */
    record WrongSystem(String because) implements SealantAnswer {}
}
