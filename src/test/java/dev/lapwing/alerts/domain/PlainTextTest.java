package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlainTextTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "H-1\r\nBcc: x",
                "H-1\nBcc: x",
                "H-1\rBcc: x",
                "H-1\u2028Bcc: x",
                "H-1\u0085Bcc: x",
                "H-1\0Bcc: x"
            })
    void aBreakInANameBecomesASpace(String name) {
        assertThat(PlainText.oneLine(name)).isEqualTo("H-1 Bcc: x");
    }

    @Property
    void oneLineHoldsNoControlCharacter(@ForAll String text) {
        assertThat(PlainText.oneLine(text).chars()).noneMatch(Character::isISOControl);
    }

    @Property
    void linesEndInPairsOfCrAndLfOnly(@ForAll String text) {
        String lines = PlainText.lines(text);

        assertThat(lines.replace("\r\n", "")).doesNotContain("\r", "\n", "\0");
    }

    @Test
    void aCutKeepsCharactersWhole() {
        assertThat(PlainText.oneLine("ab😀cd", 4)).isEqualTo("ab…");
        assertThat(PlainText.oneLine("ab😀cd", 6)).isEqualTo("ab😀cd");
    }

    @Test
    void halfACharacterIsMarked() {
        assertThat(PlainText.oneLine("a\uD83D")).isEqualTo("a\uFFFD");
    }

    @Test
    void marksThatTurnTheDirectionAreLeftOut() {
        assertThat(PlainText.oneLine("unit \u202Egnp.exe")).isEqualTo("unit gnp.exe");
    }
}
