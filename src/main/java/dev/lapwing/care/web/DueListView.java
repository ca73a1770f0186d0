package dev.lapwing.care.web;

import dev.lapwing.care.Tech;
import java.util.List;
import java.util.UUID;

/**
 * The due list as its page shows it.
 *
 * @param heard the place in the live stream up to which all that happened is shown here
 * @param total how many tasks the filter lets through; the counts add up to it
 * @param strikes strike work, the one with the least time left before rain first
 * @param holds units on hold for another reason than open strike work
 */
record DueListView(
        DueQuery query,
        List<Count> counts,
        long total,
        String allAddress,
        List<DueRow> strikes,
        List<HeldRow> holds,
        List<Section> sections,
        List<Tech> techs,
        String here,
        long heard) {

    /** How many tasks have one standing, and where to see only them. */
    record Count(String word, long number, String address) {}

    /**
     * A unit that must not be rented.
     *
     * @param question the open question that holds it, or null
     */
    record HeldRow(UUID id, String unit, String depot, String cause, String words, String since, UUID question) {}

    /**
     * The work of one standing.
     *
     * @param next address of what follows, or null
     */
    record Section(String word, String title, long total, List<DueRow> rows, String next) {}

    public boolean nothingOpen() {
        return total == 0 && !query.filtered();
    }
}
