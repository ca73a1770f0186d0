package dev.lapwing.jobs.domain.finding;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.roof.Point;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A finding as it was typed or sent, before it is checked; any part may be null.
 *
 * @param x with {@code y} the place on the plan, see {@link Point}; both or neither
 */
public record FindingEntry(
        String zone, String kind, String depth, String extent, Double lengthCm, String note, Double x, Double y) {
    private static final int LONGEST_ZONE = 120;
    private static final int LONGEST_NOTE = 2_000;
    /** No roof of the fleet has a longer seam: 30 m. */
    private static final double LONGEST_CM = 3_000;

    /** A finding of which only the zone is known. */
    public FindingEntry(String zone, String kind, String depth, String extent, Double lengthCm, String note) {
        this(zone, kind, depth, extent, lengthCm, note, null, null);
    }

    /** Returns the entry with its zone named by the plan, when it has a place on it; else the entry itself. */
    public FindingEntry placedOn(RoofPlan plan) {
        return placed() && Point.check(x, y).isEmpty()
                ? new FindingEntry(plan.zoneAt(new Point(x, y)).name(), kind, depth, extent, lengthCm, note, x, y)
                : this;
    }

    private boolean placed() {
        return x != null || y != null;
    }

    /** What became of an entry: a finding, or everything that is wrong with it. */
    public sealed interface Checked {
        record Accepted(Finding finding) implements Checked {}

        record Refused(List<FieldError> errors) implements Checked {
            public Refused {
                errors = List.copyOf(errors);
            }
        }
    }

    /** Checks every field and names each wrong one. */
    public Checked check() {
        List<FieldError> errors = new ArrayList<>();
        checkZone(errors);
        if (placed()) {
            errors.addAll(Point.check(x, y));
        }
        FindingKind readKind = readWord("kind", FindingKind.class, kind, errors);
        Depth readDepth = readWord("depth", Depth.class, depth, errors);
        Extent readExtent = readWord("extent", Extent.class, extent, errors);
        if (kind == null || kind.isBlank()) {
            errors.add(new FieldError("kind", "is needed: one of " + Words.list(FindingKind.class)));
        }
        if (readKind != null) {
            checkDepth(readKind, errors);
            checkExtent(readKind, readExtent, errors);
        }
        checkLength(errors);
        checkNote(errors);
        return errors.isEmpty()
                ? new Checked.Accepted(new Finding(
                        zone.strip(),
                        readKind,
                        readDepth,
                        readExtent,
                        lengthCm,
                        note == null ? "" : note.strip(),
                        placed() ? new Point(x, y) : null))
                : new Checked.Refused(errors);
    }

    private void checkZone(List<FieldError> errors) {
        if (zone == null || zone.isBlank()) {
            errors.add(new FieldError("zone", "is needed: where on the roof it is, such as front-left"));
        } else if (zone.length() > LONGEST_ZONE) {
            errors.add(new FieldError("zone", "has at most " + LONGEST_ZONE + " characters"));
        } else if (zone.chars().anyMatch(Character::isISOControl)) {
            errors.add(new FieldError("zone", "must not contain control characters"));
        }
    }

    private static <E extends Enum<E>> E readWord(String field, Class<E> type, String word, List<FieldError> errors) {
        if (word == null || word.isBlank()) {
            return null;
        }
        E value = Words.read(type, word).orElse(null);
        if (value == null) {
            errors.add(new FieldError(field, "is not known, expected one of " + Words.list(type)));
        }
        return value;
    }

    private void checkDepth(FindingKind readKind, List<FieldError> errors) {
        if (readKind == FindingKind.CRACK && (depth == null || depth.isBlank())) {
            errors.add(new FieldError("depth", "is needed for a crack: surface or deep"));
        }
    }

    private void checkExtent(FindingKind readKind, Extent readExtent, List<FieldError> errors) {
        String allowed = readKind.extents().stream().map(Extent::word).collect(Collectors.joining(", "));
        boolean given = extent != null && !extent.isBlank();
        if (readKind == FindingKind.ADHESION && !given) {
            errors.add(new FieldError("extent", "is needed for adhesion: one of " + allowed));
        } else if (readExtent != null && !readKind.extents().contains(readExtent)) {
            errors.add(new FieldError("extent", "for " + readKind.word() + " is one of " + allowed));
        }
    }

    private void checkLength(List<FieldError> errors) {
        if (lengthCm != null && !(lengthCm > 0 && lengthCm <= LONGEST_CM)) {
            errors.add(new FieldError("lengthCm", "is more than 0 and at most 3000 (30 m)"));
        }
    }

    private void checkNote(List<FieldError> errors) {
        if (note != null && note.length() > LONGEST_NOTE) {
            errors.add(new FieldError("note", "has at most " + LONGEST_NOTE + " characters"));
        } else if (note != null && note.indexOf('\0') >= 0) {
            errors.add(new FieldError("note", "must not hold a NUL character"));
        }
    }
}
