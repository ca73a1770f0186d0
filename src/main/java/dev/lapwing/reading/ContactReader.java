package dev.lapwing.reading;

/** Reads return notes for overhead contact. Implementations are immutable and safe for many threads. */
public interface ContactReader {
    /**
     * Reads a note.
     *
     * @param note the text as typed; any characters, any length
     * @param language two-letter code (en, es, fr) or null to detect it; other codes are read as if not given
     * @param travelHeightMetres travel height of the unit in metres, or null when not known; used to judge the height
     *     limits named in the note
     */
    Reading read(String note, String language, Double travelHeightMetres);
}
