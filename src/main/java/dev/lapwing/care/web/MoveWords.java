package dev.lapwing.care.web;

import dev.lapwing.platform.Refused;

/** Words the refusal of a move for the line above a page; the only fields are one choice and one reason. */
final class MoveWords {
    private MoveWords() {}

    static String of(Refused refused) {
        return refused.errors().stream()
                .map(error -> ("why".equals(error.field()) ? "The reason " : "The tech ") + error.message())
                .findFirst()
                .orElse(refused.getMessage());
    }
}
