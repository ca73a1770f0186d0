package dev.lapwing.web;

import io.quarkus.qute.TemplateExtension;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** What templates can ask of texts. */
@TemplateExtension
final class TemplateWords {
    private static final int STRIP = 36;

    private TemplateWords() {}

    /** Returns the length of a bar of up to 90 points for a count: six for each, the longest for 15 and more. */
    static int barWidth(Integer count) {
        return Math.min(90, count * 6);
    }

    /** Returns where the bar of a use begins in a strip 36 points high: uses differ in height and not in colour alone. */
    static int barTop(String use) {
        return STRIP - barHeight(use);
    }

    /** Returns how high the bar of a use is. */
    static int barHeight(String use) {
        return switch (use) {
            case "out" -> STRIP;
            case "workshop" -> 27;
            case "stored" -> 18;
            case "yard" -> 9;
            default -> 3;
        };
    }

    /** Returns the look of the tag that shows how a run stands. */
    static String tagOf(String state) {
        return switch (state) {
            case "done" -> "done";
            case "failed" -> "late";
            default -> "due";
        };
    }

    /** Returns a word of the contract as people write it: "air conditioner" for {@code air-conditioner}. */
    static String spaced(String word) {
        return word.replace('-', ' ');
    }

    /** Returns the text as one part of a path. */
    static String urlPart(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }

    /** Returns the name of a field as an id of an element. */
    static String fieldId(String name) {
        return "f-" + name.replace('.', '-');
    }
}
