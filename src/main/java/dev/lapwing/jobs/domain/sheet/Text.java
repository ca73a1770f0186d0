package dev.lapwing.jobs.domain.sheet;

import dev.lapwing.jobs.domain.data.Row;

/**
 * A sentence of the sheet in the languages of the product.
 *
 * @param id name that the acknowledgement is stored under
 */
public record Text(String id, String en, String es, String fr) {
    static Text read(Row row) {
        return new Text(row.text("id"), row.text("en"), row.text("es"), row.text("fr"));
    }

    /** Returns the sentence in a language (en, es, fr); other languages get English. */
    public String in(String language) {
        return switch (language) {
            case "es" -> es;
            case "fr" -> fr;
            default -> en;
        };
    }
}
