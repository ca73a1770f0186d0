package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Plain notes of every kind in three languages, typed for this test. */
class ReadingPlainNotesTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/reading/plain-notes.csv", useHeadersInDisplayName = true)
    void areReadAsAPersonWould(String verdict, String language, Double travelHeightMetres, String note) {
        Reading reading = Readers.SHIPPED.read(note, null, travelHeightMetres);
        assertThat(reading.verdict().word()).as(reading.toString()).isEqualTo(verdict);
        assertThat(reading.language()).isEqualTo(language);
        assertThat(reading.reason()).isNotBlank().doesNotContain("{");
    }
}
