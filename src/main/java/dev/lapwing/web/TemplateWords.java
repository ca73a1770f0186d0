package dev.lapwing.web;

import io.quarkus.qute.TemplateExtension;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** What templates can ask of texts. */
@TemplateExtension
final class TemplateWords {
    private TemplateWords() {}

    /** Returns the length of a bar of up to 90 points for a count: six for each, the longest for 15 and more. */
    static int barWidth(Integer count) {
        return Math.min(90, count * 6);
    }

    /** Returns a word of the contract as people write it: "air conditioner" for {@code air-conditioner}. */
    static String spaced(String word) {
        return word.replace('-', ' ');
    }

    /** Returns the text as one part of a path. */
    static String urlPart(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
