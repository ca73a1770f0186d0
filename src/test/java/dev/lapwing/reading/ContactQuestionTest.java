package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ContactQuestionTest {
    private final ContactQuestion question = ContactQuestion.load(Readers.FOLDER);

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "en|We may have touched a branch.|touched",
                "es|Puede que tocáramos una rama.|tocáramos",
                "fr|On a peut-être touché une branche.|touché"
            })
    void isOnePlainQuestionInTheLanguageOfTheNote(String language, String note, String quoted) {
        Reading reading = Readers.SHIPPED.read(note, null, null);
        assertThat(reading.verdict()).isEqualTo(ContactVerdict.UNCLEAR);
        assertThat(reading.language()).isEqualTo(language);
        assertThat(question.about(reading)).contains(quoted).endsWith("?");
    }

    @Test
    void needsNoEvidence() {
        Reading bare = new Reading(ContactVerdict.UNCLEAR, "en", 0.4, "", java.util.List.of());
        assertThat(question.about(bare))
                .isEqualTo("Did anything overhead touch the roof, or anything mounted on it, during this rental?");
    }
}
