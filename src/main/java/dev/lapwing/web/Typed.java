package dev.lapwing.web;

import dev.lapwing.platform.FieldErrors;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.Map;
import java.util.function.Function;

/** What was typed into a form, field by field; an empty field is read as absent and a wrong one is noted. */
public final class Typed {
    private final Map<String, String> values;
    private final FieldErrors errors = new FieldErrors();

    /** @param values the fields by name, as sent; null for one that was not sent */
    public Typed(Map<String, String> values) {
        this.values = values;
    }

    /** Returns the text, or null. */
    public String text(String name) {
        String value = values.get(name);
        return value == null || value.isBlank() ? null : value.strip();
    }

    /** Returns the date, or null. */
    public LocalDate date(String name) {
        return read(name, LocalDate::parse, "is not a valid date (yyyy-mm-dd)");
    }

    /** Returns the local time of a zone as an instant with offset, or null. */
    public OffsetDateTime time(String name, ZoneId zone) {
        return read(
                name,
                text -> LocalDateTime.parse(text).atZone(zone).toOffsetDateTime(),
                "is not a valid date and time (yyyy-mm-ddThh:mm)");
    }

    /** Returns the number, or null. */
    public BigDecimal number(String name) {
        return read(name, BigDecimal::new, "is not a number such as 7.45");
    }

    /**
     * Reads a small whole number; null when it is empty. What is none is read as 0, for fields that begin with 1: the
     * check of the range then names the field.
     */
    public static Integer fromOne(String text) {
        if (text == null || text.isBlank()) {
            return null;
        }
        return text.strip().matches("[0-9]{1,4}") ? Integer.valueOf(text.strip()) : Integer.valueOf(0);
    }

    /** Refuses if a field could not be read. */
    public void refuseIfWrong() {
        errors.refuseIfAny();
    }

    private <T> T read(String name, Function<String, T> reading, String message) {
        return errors.read(text(name), reading, name, message);
    }
}
