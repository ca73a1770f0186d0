package dev.lapwing.jobs.domain;

/**
 * One wrong entry, in words the person who made it can act on.
 *
 * @param field name of the entry as it was sent
 * @param message what is wrong and what is expected
 */
public record FieldError(String field, String message) {}
