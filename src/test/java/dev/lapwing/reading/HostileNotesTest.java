package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class HostileNotesTest {
    private static final int LONG = 100_000;

    static Stream<String> notes() {
        return Stream.of(
                "",
                "   \n\t ",
                "\u0000\u0001\u0007",
                "\ud83d",
                "\udc00\ud83d\ud83d",
                "a".repeat(LONG),
                "hit the roof ".repeat(LONG / 13),
                "no no not never ".repeat(LONG / 16),
                "roof, branch, ".repeat(LONG / 14),
                "if ".repeat(LONG / 3),
                "hit.".repeat(LONG / 4),
                "9'6\" ".repeat(LONG / 5),
                "1".repeat(LONG),
                "\u200b\u202e\u2066".repeat(LONG / 3),
                "e\u0301\u0323".repeat(LONG / 3),
                "\ud83c\udf33\ud83d\udca5".repeat(LONG / 4),
                "(((((,,,,;;;;????!!!!".repeat(LONG / 21),
                "rxbrk scrpd ovrhng ".repeat(LONG / 19));
    }

    @ParameterizedTest
    @MethodSource("notes")
    void areReadWithoutFailure(String note) {
        Reading reading = Readers.SHIPPED.read(note, null, 3.1);
        assertThat(reading.verdict()).isNotNull();
        EvidenceTest.assertPiecesOf(note, reading);
    }

    @Test
    void nullIsReadAsNothing() {
        assertThat(Readers.SHIPPED.read(null, null, null).verdict()).isEqualTo(ContactVerdict.NONE);
    }

    @Test
    void aStrikeIsFoundBetweenInvisibleCharacters() {
        assertThat(Readers.verdict("we h\u200bit the r\u2060oof on a br\u00adanch"))
                .isEqualTo(ContactVerdict.CONTACT);
    }

    @Test
    void unknownLanguageCodesAreReadAsIfNotGiven() {
        assertThat(Readers.SHIPPED
                        .read("Rozamos el techo con una rama", "xx", null)
                        .language())
                .isEqualTo("es");
    }
}
