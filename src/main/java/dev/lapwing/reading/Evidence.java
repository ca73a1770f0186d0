package dev.lapwing.reading;

/**
 * A marked piece of the original note.
 *
 * @param start first UTF-16 index of the piece in the note as it was sent
 * @param end index after its last character
 * @param text the piece itself, {@code note.substring(start, end)}
 * @param role what the piece contributes
 */
public record Evidence(int start, int end, String text, EvidenceRole role) {
    public Evidence {
        if (start < 0 || end <= start) {
            throw new IllegalArgumentException("not a span: " + start + " to " + end);
        }
    }
}
