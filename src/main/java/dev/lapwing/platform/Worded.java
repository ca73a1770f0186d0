package dev.lapwing.platform;

import com.fasterxml.jackson.annotation.JsonValue;

/** A constant that has a word of its own outside the code: in JSON, in CSV and on pages. */
public interface Worded {
    @JsonValue
    String word();
}
