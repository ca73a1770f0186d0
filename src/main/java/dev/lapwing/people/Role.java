package dev.lapwing.people;

import dev.lapwing.platform.Worded;
import dev.lapwing.web.Roles;

/** What a person is trusted with. */
public enum Role implements Worded {
    COORDINATOR(Roles.COORDINATOR),
    DESK(Roles.DESK),
    TECH(Roles.TECH);

    private final String word;

    Role(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
