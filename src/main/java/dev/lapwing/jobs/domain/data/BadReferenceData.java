package dev.lapwing.jobs.domain.data;

/** Says that a file of reference data cannot be used, with the file, the line (header is line 1) and the reason. */
public final class BadReferenceData extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    public BadReferenceData(String file, long line, String reason) {
        super(file + ", line " + line + ": " + reason);
    }
}
