package dev.lapwing.care.domain;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Reads the fields of one JSON object and notes what is wrong with them. A field that is missing or malformed gives a
 * stand-in, so that one pass finds every problem; fields nobody asked for are problems too, since they are misspelled.
 */
final class RuleFields {
    private static final Every STAND_IN = Every.days(1);

    private final JsonNode object;
    private final String place;
    private final List<RuleProblem> problems;
    private final Set<String> known = new HashSet<>();

    RuleFields(JsonNode object, String place, List<RuleProblem> problems) {
        this.object = object;
        this.place = place;
        this.problems = problems;
    }

    boolean has(String field) {
        known.add(field);
        return object.has(field);
    }

    JsonNode node(String field) {
        known.add(field);
        return object.path(field);
    }

    String text(String field) {
        JsonNode value = node(field);
        if (!value.isTextual() || value.textValue().isBlank()) {
            problem(field, "must be a text");
            return "";
        }
        return value.textValue().strip();
    }

    int number(String field) {
        JsonNode value = node(field);
        if (!value.isInt() || value.intValue() < 0) {
            problem(field, "must be a whole number, 0 or more");
            return 0;
        }
        return value.intValue();
    }

    boolean flag(String field) {
        JsonNode value = node(field);
        if (!value.isMissingNode() && !value.isBoolean()) {
            problem(field, "must be true or false");
        }
        return value.asBoolean();
    }

    Every every(String field) {
        String text = text(field);
        return text.isEmpty() ? STAND_IN : attempt(field, () -> Every.parse(text), STAND_IN);
    }

    /** Reads a count of days such as {@code 14 days}; {@code 0 days} is allowed. */
    int days(String field) {
        String text = text(field);
        if (text.isEmpty() || text.equals("0 days")) {
            return 0;
        }
        Every span = attempt(field, () -> Every.parse(text), STAND_IN);
        if (span.unit() != Every.Unit.DAYS) {
            problem(field, "must be in days");
        }
        return span.count();
    }

    /** Reads {@code at once}, {@code 24 hours} or {@code 3 days}. */
    Duration within(String field) {
        String text = text(field);
        if (text.isEmpty() || text.equals("at once")) {
            return Duration.ZERO;
        }
        if (text.matches("\\d{1,3} hours?")) {
            return Duration.ofHours(Integer.parseInt(text.substring(0, text.indexOf(' '))));
        }
        return Duration.ofDays(days(field));
    }

    <E extends Enum<E>> E word(String field, Class<E> type, Function<E, String> word, E standIn) {
        String text = text(field);
        for (E constant : type.getEnumConstants()) {
            if (word.apply(constant).equals(text.replace('-', ' '))
                    || word.apply(constant).equals(text)) {
                return constant;
            }
        }
        if (!text.isEmpty()) {
            problem(
                    field,
                    "must be one of "
                            + Arrays.stream(type.getEnumConstants()).map(word).toList() + ", was '" + text + "'");
        }
        return standIn;
    }

    void problem(String field, String what) {
        problems.add(new RuleProblem(place, field, what, 0));
    }

    /** Notes every field that was never asked for. */
    void close() {
        object.fieldNames().forEachRemaining(field -> {
            if (!known.contains(field)) {
                problem(field, "is not a field of this rule");
            }
        });
    }

    private <V> V attempt(String field, Supplier<V> reading, V standIn) {
        try {
            return reading.get();
        } catch (IllegalArgumentException bad) {
            problem(field, bad.getMessage());
            return standIn;
        }
    }
}
