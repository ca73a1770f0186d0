package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Learns {@code weights.txt} again from the parts that are no longer unseen, and prints the cross-validated rates:
 * {@code mvn -o test -Dtest=LearnWeightsTest -Dgroups=bench -Dexcluded.tags=evaluate}.
 */
@Tag("bench")
class LearnWeightsTest {
    private static final String[] PARTS = {
        "shared/reading/notes/develop",
        "shared/reading/notes/kept",
        "shared/reading/notes/fresh",
        "shared/reading/notes/train",
        "shared/reading/notes/second",
        "shared/reading/notes/more",
        "src/test/resources/reading/notes"
    };

    @Test
    void learnsFromTheNotesThatMayBeLearnedFrom() throws IOException {
        String[] arguments = new String[PARTS.length + 1];
        arguments[0] = Readers.FOLDER.toString();
        System.arraycopy(PARTS, 0, arguments, 1, PARTS.length);
        WeightsTraining.main(arguments);
        Reading reading = ContactReaders.load(Readers.FOLDER).read("A branch scraped the roof.", null, null);
        assertThat(reading.verdict()).isEqualTo(ContactVerdict.CONTACT);
    }
}
