package dev.lapwing.jobs.web;

import java.util.List;
import java.util.UUID;

/**
 * How far a sheet is, for the page and for the script on it.
 *
 * @param asOf milliseconds since 1970, tells an older state from a newer one
 * @param entries how many entries there ever were; a signature names the number that the signer has seen
 * @param mayFill whether the person looking fills it in
 * @param read whether this person has read the cautions
 * @param started whether the work is under way
 * @param closedBecause why nothing can be entered now, or null
 * @param findings those that stand
 * @param takenBack those that were taken back
 * @param signed the signature and what it led to, or null
 */
public record SheetState(
        long asOf,
        int entries,
        boolean mayFill,
        boolean read,
        boolean started,
        String closedBecause,
        List<FindingLine> findings,
        List<TakenBack> takenBack,
        Signed signed) {

    /** Whether entries are taken now. */
    public boolean open() {
        return mayFill && read && started;
    }

    /**
     * A finding with its words.
     *
     * @param mine whether the person looking recorded it
     * @param x with {@code y} its place on the plan, or null
     */
    public record FindingLine(
            UUID id,
            String words,
            String when,
            String who,
            boolean mine,
            String zone,
            String kind,
            String depth,
            String extent,
            Double lengthCm,
            String note,
            Double x,
            Double y) {}

    /** A finding that was taken back, in words with who noted it and who took it back. */
    public record TakenBack(String words, boolean mine) {}

    /** A signed sheet. */
    public record Signed(
            String by, String when, String statement, String verdict, List<String> reasons, List<Work> followUps) {}

    /** Work that follows. */
    public record Work(UUID task, String words) {}
}
