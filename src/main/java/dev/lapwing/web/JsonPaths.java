package dev.lapwing.web;

import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import java.util.Locale;

/** Says where in a JSON body something is wrong, and what, without the names of our classes. */
final class JsonPaths {
    private JsonPaths() {}

    /** Returns the path of the wrong value, such as {@code marks[0].x}. */
    static String of(JsonMappingException wrong) {
        var path = new StringBuilder();
        for (var step : wrong.getPath()) {
            if (step.getFieldName() == null) {
                path.append('[').append(step.getIndex()).append(']');
            } else {
                path.append(path.isEmpty() ? "" : ".").append(step.getFieldName());
            }
        }
        return path.toString();
    }

    static String message(JsonMappingException wrong) {
        if (wrong.getCause() instanceof IllegalArgumentException ours && ours.getMessage() != null) {
            return ours.getMessage();
        }
        if (wrong instanceof InvalidFormatException format && format.getTargetType() != null) {
            return "is not a valid " + plainName(format.getTargetType());
        }
        if (wrong instanceof MismatchedInputException mismatch && mismatch.getTargetType() != null) {
            return "must be a " + plainName(mismatch.getTargetType());
        }
        return "cannot be read";
    }

    private static String plainName(Class<?> type) {
        return switch (type.getSimpleName()) {
            case "OffsetDateTime", "Instant" -> "time with offset (RFC 3339)";
            case "LocalDate" -> "date (yyyy-mm-dd)";
            case "String" -> "text";
            case "Integer", "int", "Long", "long" -> "whole number";
            case "Double", "double", "BigDecimal" -> "number";
            case "Boolean", "boolean" -> "true or false";
            case "ArrayList", "List" -> "list";
            case "UUID" -> "id";
            default -> type.isRecord() ? "object" : type.getSimpleName().toLowerCase(Locale.ROOT);
        };
    }
}
