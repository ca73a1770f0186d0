package dev.lapwing.web;

/** Knows what people are called. */
public interface PersonNames {
    /** Returns the full name of a person, or the sign-in name itself when nobody has it; null stays null. */
    String of(String username);
}
