package dev.lapwing.jobs.domain.sheet;

import java.time.Instant;

/**
 * One thing done on a sheet.
 *
 * @param subject the cleaner or sealant, or null
 * @param words why, or what was seen; empty when nothing was said
 * @param moment when it was so
 */
public record SheetEvent(SheetEventKind kind, String subject, String words, Instant moment) {
    /** Returns the event in one line, without its moment. */
    public String inWords() {
        String what = kind.label() + (subject == null ? "" : ": " + subject);
        return words.isEmpty() ? what : what + " (" + words + ")";
    }
}
