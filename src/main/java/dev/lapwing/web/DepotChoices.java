package dev.lapwing.web;

import java.time.ZoneId;
import java.util.List;

/** Knows the depots that a page can offer. */
public interface DepotChoices {
    /** One depot to choose, with its time zone. */
    record Choice(String code, String name, ZoneId zone) {}

    /** Returns all depots by name. */
    List<Choice> all();
}
