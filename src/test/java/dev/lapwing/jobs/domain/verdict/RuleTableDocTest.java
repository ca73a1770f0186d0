package dev.lapwing.jobs.domain.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class RuleTableDocTest {
    @Test
    void theTableInTheDocumentIsTheTableInForce() throws IOException {
        List<String> documented = Files.readAllLines(Path.of("docs/job-sheet.md")).stream()
                .dropWhile(line -> !line.startsWith("| rule | verdict |"))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .toList();

        assertThat(documented)
                .containsExactlyElementsOf(RuleTable.ofTheTrade().lines().stream()
                        .map(RuleTableDocTest::row)
                        .toList());
    }

    private static String row(RuleTable.Line line) {
        return "| "
                + String.join(
                        " | ",
                        line.id(),
                        line.verdict().word(),
                        line.work() == null ? "–" : line.work().word(),
                        line.hold() ? "yes" : "no",
                        line.urgency().word(),
                        line.whenPressed().word(),
                        line.because())
                + " |";
    }
}
