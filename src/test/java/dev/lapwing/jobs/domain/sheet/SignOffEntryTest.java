package dev.lapwing.jobs.domain.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.jobs.domain.FieldError;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SignOffEntryTest {
    @Test
    void acceptsACompleteEntry() {
        assertThat(new SignOffEntry("tech1", true, true, "looked at all of it").check())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {
                "-, true, true, seen, by",
                "tech1, -, true, seen, cautionsRead",
                "tech1, false, true, seen, cautionsRead",
                "tech1, true, -, seen, dryAtInspection",
                "tech1, true, false, seen, dryAtInspection",
                "tech1, true, true, ' ', statement",
            })
    void namesTheWrongField(String by, Boolean cautions, Boolean dry, String statement, String wrong) {
        assertThat(new SignOffEntry(by, cautions, dry, statement).check())
                .extracting(FieldError::field)
                .containsExactly(wrong);
    }

    @Test
    void namesEveryWrongFieldAtOnce() {
        assertThat(new SignOffEntry(null, null, null, "x".repeat(4_001)).check())
                .extracting(FieldError::field)
                .containsExactly("by", "cautionsRead", "dryAtInspection", "statement");
    }
}
