package dev.lapwing.alerts.application;

import java.util.List;

/**
 * What a mail says, in the language of its reader; the layout is added by the templates.
 *
 * @param language two-letter code
 * @param subject says unit, what and until when
 * @param greeting names the reader
 * @param lead what happened and what is asked
 * @param facts what to know of the work
 * @param quote words of the report, or null
 * @param link address of the page to go to
 * @param cautions what keeps people whole; empty when no work is asked for
 */
record Letter(
        String language,
        String subject,
        String greeting,
        String lead,
        List<Fact> facts,
        Quote quote,
        Link link,
        String cautionsTitle,
        List<String> cautions,
        String footer) {

    /** One thing to know. */
    record Fact(String label, String value) {}

    /** Words of a report, as evidence. */
    record Quote(String label, String words) {}

    /** Where to go. */
    record Link(String label, String address) {}
}
