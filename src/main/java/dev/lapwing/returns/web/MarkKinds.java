package dev.lapwing.returns.web;

import java.util.List;

/** What the desk can mark on the roof plan. */
final class MarkKinds {
    static final List<String> ALL =
            List.of("scrape", "dent", "hole or tear", "broken part", "branch or leaves", "other");

    private MarkKinds() {}
}
