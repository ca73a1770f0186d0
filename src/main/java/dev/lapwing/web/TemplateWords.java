package dev.lapwing.web;

import io.quarkus.qute.TemplateExtension;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;

/** What templates can ask of texts. */
@TemplateExtension
final class TemplateWords {
    private TemplateWords() {}

    /** Returns the text as one part of a path. */
    static String urlPart(String text) {
        return URLEncoder.encode(text, StandardCharsets.UTF_8).replace("+", "%20");
    }
}
