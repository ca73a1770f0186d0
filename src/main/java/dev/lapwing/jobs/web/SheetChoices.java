package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.Words;
import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.FindingKind;
import dev.lapwing.jobs.domain.roof.Zone;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What can be chosen in the form of a finding. */
public record SheetChoices(List<Choice> zones, List<Choice> kinds, List<Choice> depths, List<Choice> extents) {
    static final SheetChoices ALL = new SheetChoices(
            Arrays.stream(Zone.Along.values())
                    .flatMap(along -> Arrays.stream(Zone.Across.values()).map(across -> new Zone(along, across, null)))
                    .map(zone -> choice(zone.field()))
                    .toList(),
            choices(FindingKind.values()),
            choices(Depth.values()),
            choices(Extent.values()));

    /** A word as it is sent, as it reads, and what it means or null. */
    public record Choice(String word, String label, String hint) {}

    private static List<Choice> choices(Enum<?>[] values) {
        return Stream.of(values).map(value -> choice(Words.of(value))).toList();
    }

    private static Choice choice(String word) {
        return new Choice(word, word.replace('-', ' '), hint(word));
    }

    private static String hint(String word) {
        return switch (word) {
            case "chalking" -> "powder on the hand";
            case "void" -> "gap in the sealant";
            case "adhesion" -> "edge picked";
            case "soft-spot" -> "gives way";
            case "attachment" -> "what is mounted";
            default -> null;
        };
    }

    /** Returns the name that a field has on the page. */
    static String label(String field) {
        return switch (field) {
            case "lengthCm" -> "Length";
            case "by" -> "Your name";
            case "read", "cautionsRead" -> "The cautions:";
            case "weather" -> "Weather";
            case "dryAtInspection" -> "Dry roof:";
            case "statement" -> "Your statement";
            default -> field.substring(0, 1).toUpperCase(Locale.ROOT) + field.substring(1);
        };
    }
}
