package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.sheet.Text;
import java.util.List;
import java.util.UUID;

/**
 * What the page of a sheet shows.
 *
 * @param open whether it can be filled in now by the person who looks at it
 * @param closedBecause why it cannot, or null
 * @param membrane what is known of the membrane system
 * @param signed the signature and what it led to, or null
 */
public record SheetView(
        UUID id,
        String unit,
        String kind,
        String state,
        boolean open,
        String closedBecause,
        List<Text> cautions,
        List<String> ladder,
        List<Text> washSteps,
        String membrane,
        List<FindingLine> findings,
        Signed signed) {

    /** A finding in words, with who recorded it when. */
    public record FindingLine(String words, String note, String when, String who) {}

    /** A signed sheet. */
    public record Signed(
            String by, String when, String statement, String verdict, List<String> reasons, List<Work> followUps) {}

    /** Work that follows. */
    public record Work(UUID task, String words) {}
}
