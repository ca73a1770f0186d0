package dev.lapwing.reading;

/** A word, phrase or pattern found in a note, with what it stands for and what the words around it make of it. */
final class Signal {
    /** What the words around make of a signal, weakest first; a stronger one replaces a weaker one. */
    enum Standing {
        SAID,
        SUPPOSED,
        PAST,
        CONDITIONAL,
        NEARLY,
        DENIED
    }

    final long signs;
    final int from;
    final int to;
    private Standing standing = Standing.SAID;
    /** The signal that gave this one its standing, or null. */
    private Signal trigger;

    Signal(long signs, int from, int to) {
        this.signs = signs;
        this.from = from;
        this.to = to;
    }

    boolean is(Sign sign) {
        return (signs & sign.bit()) != 0;
    }

    boolean isAny(long bits) {
        return (signs & bits) != 0;
    }

    Standing standing() {
        return standing;
    }

    Signal trigger() {
        return trigger;
    }

    void mark(Standing found, Signal by) {
        if (found.compareTo(standing) > 0) {
            standing = found;
            trigger = by;
        }
    }

    void restore() {
        standing = Standing.SAID;
        trigger = null;
    }

    /** Returns whether the note claims this as having happened on this trip, surely or perhaps. */
    boolean stands() {
        return standing == Standing.SAID || standing == Standing.SUPPOSED;
    }
}
