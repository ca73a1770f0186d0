package dev.lapwing.platform;

/**
 * What is wrong with one field of a request.
 *
 * @param field the name of the field as sent, with dots and indexes, such as {@code marks[0].x}
 * @param message what is wrong, in words for the person who sent it
 */
public record FieldError(String field, String message) {}
