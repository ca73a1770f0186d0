package dev.lapwing.returns;

import dev.lapwing.reading.Evidence;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** A note cut into pieces, so that a page can mark what led to its reading. */
public final class MarkedNote {
    /**
     * One piece of the note.
     *
     * @param role what the piece contributes, as the word of the contract, or null for the text between
     */
    public record Piece(String text, String role) {}

    private MarkedNote() {}

    /** Cuts a note by its evidence; together the pieces are the note. A span beyond the note or over another is left out. */
    public static List<Piece> of(String note, List<Evidence> evidence) {
        List<Piece> pieces = new ArrayList<>();
        int at = 0;
        for (Evidence span :
                evidence.stream().sorted(Comparator.comparing(Evidence::start)).toList()) {
            if (span.start() < at || span.end() > note.length()) {
                continue;
            }
            if (span.start() > at) {
                pieces.add(new Piece(note.substring(at, span.start()), null));
            }
            pieces.add(new Piece(
                    note.substring(span.start(), span.end()), span.role().word()));
            at = span.end();
        }
        if (at < note.length()) {
            pieces.add(new Piece(note.substring(at), null));
        }
        return pieces;
    }
}
