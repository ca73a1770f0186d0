package dev.lapwing.jobs.domain.finding;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.jobs.domain.FieldError;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FindingEntryTest {
    @Test
    void acceptsACompleteEntry() {
        var entry = new FindingEntry(" rear-left ", "crack", "deep", "one", 12.5, " along the seam ");

        assertThat(entry.check())
                .isEqualTo(new FindingEntry.Checked.Accepted(
                        new Finding("rear-left", FindingKind.CRACK, Depth.DEEP, Extent.ONE, 12.5, "along the seam")));
    }

    @ParameterizedTest
    @CsvSource({
        "dirt",
        "chalking",
        "void",
        "tear",
        "puncture",
        "soft-spot",
        "attachment",
        "Soft Spot",
        "SOFT_SPOT",
    })
    void takesTheWordsOfTheContractAndForgivesTheirWriting(String kind) {
        assertThat(new FindingEntry("front-left", kind, null, null, null, null).check())
                .isInstanceOf(FindingEntry.Checked.Accepted.class);
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "-, crack, deep, -, 5, zone",
                "' ', crack, deep, -, 5, zone",
                "front-left, -, -, -, 5, kind",
                "front-left, hole, -, -, 5, kind",
                "front-left, crack, -, -, 5, depth",
                "front-left, crack, halfway, -, 5, depth",
                "front-left, adhesion, -, -, 5, extent",
                "front-left, adhesion, -, several, 5, extent",
                "front-left, tear, -, loose-here, 5, extent",
                "front-left, adhesion, -, wobbly, 5, extent",
                "front-left, tear, -, -, 0, lengthCm",
                "front-left, tear, -, -, -1, lengthCm",
                "front-left, tear, -, -, 3001, lengthCm",
                "front-left, tear, -, -, NaN, lengthCm",
                "front-left, tear, -, -, Infinity, lengthCm",
            })
    void namesTheWrongField(String zone, String kind, String depth, String extent, Double length, String wrong) {
        assertThat(refusedFields(new FindingEntry(zone, kind, depth, extent, length, null)))
                .containsExactly(wrong);
    }

    @Test
    void namesEveryWrongFieldAtOnce() {
        var entry = new FindingEntry("a\u0000b", "hole", "halfway", "wobbly", -3.0, "x".repeat(2_001));

        assertThat(refusedFields(entry)).containsExactly("zone", "kind", "depth", "extent", "lengthCm", "note");
    }

    private static List<String> refusedFields(FindingEntry entry) {
        var refused = (FindingEntry.Checked.Refused) entry.check();
        return refused.errors().stream().map(FieldError::field).toList();
    }
}
