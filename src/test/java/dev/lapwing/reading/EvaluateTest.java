package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Prints the evaluation: {@code mvn -Pevaluate verify}. */
@Tag("evaluate")
class EvaluateTest {
    @Test
    void printsHowTheLabelledNotesAreRead() throws IOException {
        Path notes = Readers.FOLDER.resolve("notes");
        List<Path> files = ReadingEvaluation.notesIn(notes.resolve("develop"));
        assertThat(files).isNotEmpty();
        ReadingEvaluation.main(new String[] {
            Readers.FOLDER.toString(),
            notes.resolve("develop").toString(),
            notes.resolve("kept").toString(),
            notes.resolve("fresh").toString()
        });
    }
}
