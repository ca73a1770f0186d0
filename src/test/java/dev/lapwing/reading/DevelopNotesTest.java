package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the notes the lexicons were developed on to the floor, so that a change that loses some fails the build. */
class DevelopNotesTest {
    @ParameterizedTest
    @ValueSource(strings = {"en", "es", "fr"})
    void areReadNoWorseThanTheFloor(String language) throws IOException {
        Path file = Readers.FOLDER.resolve("notes/develop/" + language + ".jsonl");
        Tally tally = ReadingEvaluation.tally(Readers.SHIPPED, file);
        String report = tally.report(language);
        assertThat(tally.contactAsContact()).as(report).isGreaterThanOrEqualTo(0.92);
        assertThat(tally.contactAsNone()).as(report).isLessThanOrEqualTo(0.015);
        assertThat(tally.noneAsContact()).as(report).isLessThanOrEqualTo(0.04);
        assertThat(tally.noneAsUnclear()).as(report).isLessThanOrEqualTo(0.10);
    }
}
