package dev.lapwing.care.domain;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.HashMap;
import java.util.Map;

/** Knows on which line of a file of rules each field stands. */
final class RuleLines {
    private static final JsonFactory JSON = new JsonFactory();
    private static final String CONDITIONS = "when of ";

    private final Map<String, Integer> lines = new HashMap<>();
    private final Map<String, String> placesById = new HashMap<>();

    private RuleLines() {}

    /** Reads a text that is known to be JSON. */
    static RuleLines of(String json) {
        var found = new RuleLines();
        try (JsonParser parser = JSON.createParser(json)) {
            while (parser.nextToken() != null) {
                found.note(parser);
            }
        } catch (IOException notJson) {
            throw new UncheckedIOException(notJson);
        }
        return found;
    }

    private void note(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        String path = path(parser.getParsingContext());
        int line = parser.currentTokenLocation().getLineNr();
        if (token == JsonToken.FIELD_NAME || token == JsonToken.START_OBJECT) {
            lines.putIfAbsent(path, line);
        } else if (token == JsonToken.VALUE_STRING && path.matches("rules\\[\\d+]\\.id")) {
            placesById.putIfAbsent(parser.getText(), path.substring(0, path.lastIndexOf('.')));
        }
    }

    /** Returns the way to where the parser is, such as {@code rules[2].when.surfaces}. */
    private static String path(JsonStreamContext at) {
        if (at == null || at.inRoot()) {
            return "";
        }
        String before = path(at.getParent());
        if (at.inArray()) {
            return before + "[" + at.getCurrentIndex() + "]";
        }
        String name = at.getCurrentName();
        if (name == null) {
            return before;
        }
        return before.isEmpty() ? name : before + "." + name;
    }

    /** Returns the line of a problem: that of its field, else of its rule, else 0. */
    int of(RuleProblem problem) {
        if (problem.place() == null) {
            return 0;
        }
        String place = pathOf(problem.place());
        String field = place.isEmpty() ? problem.field() : place + "." + problem.field();
        return lines.getOrDefault(field, lines.getOrDefault(place, 0));
    }

    private String pathOf(String place) {
        if (place.equals(RuleFile.WHOLE)) {
            return "";
        }
        if (place.startsWith(CONDITIONS)) {
            return placesById.getOrDefault(place.substring(CONDITIONS.length()), "") + ".when";
        }
        return place.startsWith("rules[")
                ? place.substring(0, place.indexOf(']') + 1)
                : placesById.getOrDefault(place, place);
    }
}
