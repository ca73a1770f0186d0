package dev.lapwing.returns.web;

import dev.lapwing.returns.MarkedNote;
import java.util.List;
import java.util.UUID;

/**
 * A filed report and what followed from it, as its page shows it.
 *
 * @param task the inspection, or null
 * @param tech full name of who has the inspection, or null
 * @param question what the desk is asked, or null
 * @param contact the answer, or null while there is none
 */
record ReportView(
        UUID id,
        String unit,
        String depot,
        String returned,
        String reportedBy,
        String note,
        ReadingAnswer reading,
        List<MarkedNote.Piece> pieces,
        List<ShownMark> marks,
        boolean strike,
        UUID task,
        String tech,
        String question,
        Boolean contact,
        String answeredBy) {

    /** One mark in words and as a point of the plan. */
    record ShownMark(String place, String kind, double x, double y) {}

    public boolean asks() {
        return question != null && contact == null;
    }
}
