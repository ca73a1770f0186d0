package dev.lapwing.returns.web;

import dev.lapwing.reading.Reading;
import java.util.List;

/** A reading as it is answered. */
record ReadingAnswer(String verdict, String language, double score, String reason, List<Piece> evidence) {
    /** A marked piece of the note; positions count UTF-16 units. */
    record Piece(int start, int end, String text, String role) {}

    static ReadingAnswer of(Reading reading) {
        return new ReadingAnswer(
                reading.verdict().word(),
                reading.language(),
                reading.score(),
                reading.reason(),
                reading.evidence().stream()
                        .map(piece -> new Piece(
                                piece.start(),
                                piece.end(),
                                piece.text(),
                                piece.role().word()))
                        .toList());
    }
}
