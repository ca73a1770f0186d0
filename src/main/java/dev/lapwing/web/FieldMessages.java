package dev.lapwing.web;

import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import java.util.LinkedHashMap;
import java.util.Map;

/** What is wrong with the fields of a form, to be shown beside each. */
public final class FieldMessages {
    /** Nothing is wrong. */
    public static final FieldMessages NONE = new FieldMessages(Map.of());

    private final Map<String, String> byField;

    private FieldMessages(Map<String, String> byField) {
        this.byField = byField;
    }

    /** Takes the messages of a refusal; of two for one field the first counts. */
    public static FieldMessages of(Refused refused) {
        Map<String, String> byField = new LinkedHashMap<>();
        for (FieldError error : refused.errors()) {
            byField.putIfAbsent(error.field(), error.message());
        }
        return new FieldMessages(byField);
    }

    /** Returns what is wrong with a field, or null. */
    public String at(String field) {
        return byField.get(field);
    }

    public boolean none() {
        return byField.isEmpty();
    }

    public int count() {
        return byField.size();
    }

    /** Returns the wrong fields in order, with their messages. */
    public Map<String, String> all() {
        return byField;
    }
}
