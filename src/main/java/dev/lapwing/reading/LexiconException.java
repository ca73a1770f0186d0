package dev.lapwing.reading;

import java.nio.file.Path;

/** A lexicon file cannot be used; the message names file, line and reason. */
public final class LexiconException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final int line;

    LexiconException(Path file, int line, String reason) {
        super(file + ", line " + line + ": " + reason);
        this.line = line;
    }

    /** Returns the line of the fault, counted from 1; 0 when the file as a whole is meant. */
    public int line() {
        return line;
    }
}
