package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class EvidenceTest {
    @Test
    void isMarkedInTheNoteAsItWasSent() {
        String note = "We scr\u200bapèd the \u202eroof on a low branch. No harm.";
        Reading reading = Readers.SHIPPED.read(note, "en", null);
        assertThat(reading.evidence())
                .extracting(Evidence::text, Evidence::role)
                .contains(
                        org.assertj.core.groups.Tuple.tuple("scr\u200bapèd", EvidenceRole.CONTACT),
                        org.assertj.core.groups.Tuple.tuple("roof", EvidenceRole.ROOF));
        assertPiecesOf(note, reading);
    }

    @Test
    void namesTheDenial() {
        Reading reading = Readers.SHIPPED.read("We did not touch the roof.", "en", null);
        assertThat(reading.verdict()).isEqualTo(ContactVerdict.NONE);
        assertThat(reading.evidence()).extracting(Evidence::role).contains(EvidenceRole.NEGATION);
    }

    @Property(tries = 300)
    void neverLeavesTheNoteAndNeverOverlaps(@ForAll @StringLength(max = 300) String note) {
        assertPiecesOf(note, Readers.SHIPPED.read(note, null, 3.0));
    }

    static void assertPiecesOf(String note, Reading reading) {
        int end = 0;
        for (Evidence evidence : reading.evidence()) {
            assertThat(evidence.start()).isGreaterThanOrEqualTo(end);
            assertThat(evidence.text()).isEqualTo(note.substring(evidence.start(), evidence.end()));
            end = evidence.end();
        }
        assertThat(reading.score()).isBetween(0.0, 1.0);
    }
}
