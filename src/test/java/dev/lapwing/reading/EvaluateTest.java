package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Prints the evaluation of every part of the labelled notes: {@code mvn -Pevaluate verify}. */
@Tag("evaluate")
class EvaluateTest {
    @Test
    void printsHowTheLabelledNotesAreRead() throws IOException {
        Path notes = Readers.FOLDER.resolve("notes");
        List<String> arguments = new ArrayList<>(List.of(Readers.FOLDER.toString()));
        try (Stream<Path> parts = Files.list(notes)) {
            parts.filter(Files::isDirectory).sorted().map(Path::toString).forEach(arguments::add);
        }
        assertThat(arguments).contains(notes.resolve("develop").toString());
        ReadingEvaluation.main(arguments.toArray(String[]::new));
    }
}
