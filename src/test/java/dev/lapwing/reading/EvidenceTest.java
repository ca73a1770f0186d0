package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.Arrays;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

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

    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "fr"})
    void reasonAgreesWithTheVerdict(String language) throws IOException {
        LexiconFile lexicon = LexiconFile.read(Readers.FOLDER.resolve(language + ".lexicon"));
        for (LabelledNote note : LabelledNote.readAll(Readers.FOLDER.resolve("notes/train/" + language + ".jsonl"))) {
            Reading reading = Readers.SHIPPED.read(note.note(), language, null);
            assertThat(Arrays.stream(Sentence.values())
                            .filter(sentence -> fits(reading.reason(), lexicon.sentence(sentence)))
                            .map(EvidenceTest::verdictOf))
                    .as(reading.toString())
                    .contains(reading.verdict());
            assertThat(reading.reason()).doesNotContain("\u201c\u201d").doesNotContain("{");
        }
    }

    private static boolean fits(String reason, String sentence) {
        return reason.matches(Pattern.quote(sentence).replaceAll("\\{[01]}", "\\\\E.*\\\\Q"));
    }

    private static ContactVerdict verdictOf(Sentence sentence) {
        if (sentence.isOpen()) {
            return ContactVerdict.UNCLEAR;
        }
        return sentence.isNone() ? ContactVerdict.NONE : ContactVerdict.CONTACT;
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
