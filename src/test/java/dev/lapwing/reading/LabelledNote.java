package dev.lapwing.reading;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A note with the verdict a person gave it; one JSON object to a line. */
record LabelledNote(String id, String language, String note, ContactVerdict verdict, String kind, Double travelHeight) {
    private static final ObjectMapper JSON = new ObjectMapper();

    static List<LabelledNote> readAll(Path file) throws IOException {
        List<LabelledNote> notes = new ArrayList<>();
        for (String line : Files.readAllLines(file)) {
            if (!line.isBlank()) {
                notes.add(of(JSON.readTree(line)));
            }
        }
        return notes;
    }

    private static LabelledNote of(JsonNode json) {
        return new LabelledNote(
                json.path("id").asText(),
                json.path("language").asText(),
                json.path("note").asText(),
                ContactVerdict.valueOf(json.path("verdict").asText().toUpperCase(Locale.ROOT)),
                json.path("kind").asText(),
                json.has("travelHeightMetres") ? json.get("travelHeightMetres").asDouble() : null);
    }
}
