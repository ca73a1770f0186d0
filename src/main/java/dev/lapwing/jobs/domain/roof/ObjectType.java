package dev.lapwing.jobs.domain.roof;

import dev.lapwing.jobs.domain.Words;

/** What can be placed on a roof plan, and where sealant runs at it. */
public enum ObjectType {
    VENT(Sealed.AROUND),
    PLUMBING_VENT(Sealed.AROUND),
    SKYLIGHT(Sealed.AROUND),
    ANTENNA(Sealed.AROUND),
    AIR_CONDITIONER(Sealed.NOT),
    PANEL(Sealed.NOT),
    RACK(Sealed.NOT),
    AWNING(Sealed.ALONG),
    SEAM(Sealed.ALONG),
    MOULDING(Sealed.ALONG),
    EDGE(Sealed.ALONG),
    OTHER(Sealed.NOT);

    private final Sealed sealed;

    private enum Sealed {
        AROUND,
        ALONG,
        NOT
    }

    ObjectType(Sealed sealed) {
        this.sealed = sealed;
    }

    /** Returns the word used in data and pages, such as {@code air-conditioner}. */
    public String word() {
        return Words.of(this);
    }

    /** Says whether it is long and thin, with sealant along it. */
    public boolean line() {
        return sealed == Sealed.ALONG;
    }

    /** Returns the metres of sealant at an object of these sizes. */
    double sealantMetres(double length, double width) {
        return switch (sealed) {
            case AROUND -> 2 * (length + width);
            case ALONG -> Math.max(length, width);
            case NOT -> 0;
        };
    }
}
