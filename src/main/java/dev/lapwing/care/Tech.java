package dev.lapwing.care;

/**
 * Someone who can be given roof work.
 *
 * @param username sign-in name
 * @param fullName name for people
 */
public record Tech(String username, String fullName) {}
