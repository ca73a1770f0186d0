package dev.lapwing.reading;

import java.util.List;

/**
 * What a note says about overhead contact, and why.
 *
 * @param verdict the answer
 * @param language two-letter code of the language the note was read in: en, es or fr
 * @param score weight of the case for contact, 0 (none) to 1 (certain)
 * @param reason one plain sentence in the note's language
 * @param evidence the pieces that led to the verdict, by start, not overlapping
 */
public record Reading(ContactVerdict verdict, String language, double score, String reason, List<Evidence> evidence) {
    public Reading {
        evidence = List.copyOf(evidence);
    }
}
