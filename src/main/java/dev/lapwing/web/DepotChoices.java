package dev.lapwing.web;

import java.util.List;

/** Knows the depots that a page can offer. */
public interface DepotChoices {
    /** One depot to choose. */
    record Choice(String code, String name) {}

    /** Returns all depots by name. */
    List<Choice> all();
}
