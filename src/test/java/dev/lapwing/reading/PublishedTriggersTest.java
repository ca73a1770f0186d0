package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.reading.Signal.Standing;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/**
 * The published triggers of NegEx (Chapman et al. 2001) and ConText (Harkema et al. 2009), each put into a note of this
 * trade. Source: shared/checks/text-negation.csv.
 */
class PublishedTriggersTest {
    /** Clinical words that mean something else on a return report ("returning the van we ..."); left out on purpose. */
    private static final Set<String> NOT_OF_THIS_TRADE = Set.of("return", "returning");

    @TestFactory
    Stream<DynamicTest> everyTriggerActsAsPublished() throws IOException {
        return rows().stream()
                .filter(row -> !NOT_OF_THIS_TRADE.contains(row.get("trigger")))
                .map(row -> DynamicTest.dynamicTest(
                        row.get("axis") + ", " + row.get("class") + ": " + row.get("trigger"), () -> check(row)));
    }

    private static List<CSVRecord> rows() throws IOException {
        try (Reader file = Files.newBufferedReader(Path.of("shared/checks/text-negation.csv"));
                CSVParser parser = CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(file)) {
            return parser.getRecords();
        }
    }

    private static void check(CSVRecord row) {
        String trigger = row.get("trigger");
        switch (row.get("axis") + " " + row.get("class")) {
            case "negation pre-negation" -> contact(trigger + " contact with the roof", Standing.DENIED);
            case "negation post-negation" -> contact("contact with the roof " + trigger, Standing.DENIED);
            case "negation pre-possible" -> notDenied(trigger + " contact with the roof");
            case "negation post-possible" -> notDenied("contact with the roof " + trigger);
            case "negation pseudo-negation" -> notDenied(trigger + " contact with the roof");
            case "negation termination" -> contact("not late " + trigger + " contact with the roof", Standing.SAID);
            case "hypothetical hypothetical trigger (pre)" ->
                contact(trigger + " contact with the roof", Standing.CONDITIONAL);
            case "hypothetical hypothetical pseudo-trigger" -> notConditional(trigger + " contact with the roof");
            case "hypothetical hypothetical termination" ->
                contact("if late " + trigger + " contact with the roof", Standing.SAID);
            case "historical historical trigger (pre)" -> contact(trigger + " contact with the roof", Standing.PAST);
            case "historical historical trigger (one word)" ->
                contact("contact with the roof " + trigger, Standing.PAST);
            case "historical historical pseudo-trigger" -> contact(trigger + " contact with the roof", Standing.SAID);
            case "historical historical termination" ->
                contact("in the past for washing " + trigger + " contact with the roof", Standing.SAID);
            default -> throw new AssertionError("class without a check: " + row);
        }
    }

    private static void contact(String note, Standing expected) {
        assertThat(Readers.standing(note, Sign.CONTACT)).as(note).isEqualTo(expected);
    }

    private static void notDenied(String note) {
        assertThat(Readers.standing(note, Sign.CONTACT)).as(note).isIn(Standing.SAID, Standing.SUPPOSED);
        assertThat(Readers.verdict(note)).as(note).isNotEqualTo(ContactVerdict.NONE);
    }

    private static void notConditional(String note) {
        assertThat(Readers.standing(note, Sign.CONTACT)).as(note).isIn(Standing.SAID, Standing.SUPPOSED);
    }
}
