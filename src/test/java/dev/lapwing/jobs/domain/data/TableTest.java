package dev.lapwing.jobs.domain.data;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.finding.Depth;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TableTest {
    @Test
    void readsRowsByColumnName() {
        var rows = Table.read("t.csv", "b,a\n\"x, y\",1\n", "a", "b");

        assertThat(rows).hasSize(1);
        assertThat(rows.get(0).text("b")).isEqualTo("x, y");
        assertThat(rows.get(0).number("a")).isEqualTo(1);
    }

    @ParameterizedTest
    @CsvSource({
        "'a\n1', 't.csv, line 1: column ''b'' is missing'",
        "'a,b\n1,2\n1', 't.csv, line 3: has 1 values'",
        "'a,b', 't.csv, line 1: has no row'",
        "'', 't.csv, line 1'",
        "'a,a\n1,2', 't.csv, line 1'",
    })
    void refusesWhatIsNoSuchTable(String text, String message) {
        assertThatThrownBy(() -> Table.read("t.csv", text, "a", "b"))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageStartingWith(message);
    }

    @Test
    void refusesAnUnclosedQuote() {
        assertThatThrownBy(() -> Table.read("t.csv", "a,b\n\"1,2\n", "a", "b"))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageStartingWith("t.csv");
    }

    @ParameterizedTest
    @CsvSource({"soon, is not a number", "NaN, is not a finite number", "'', is empty"})
    void refusesAValueThatIsNoNumber(String value, String why) {
        var row = Table.read("t.csv", "a,b\n" + value + ",2\n", "a").get(0);

        assertThatThrownBy(() -> row.number("a"))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("line 2: 'a' " + why);
    }

    @Test
    void refusesAWordThatIsNotKnown() {
        var row = Table.read("t.csv", "a,b\nhalfway,2\n", "a").get(0);

        assertThatThrownBy(() -> row.word("a", Depth.class))
                .hasMessage("t.csv, line 2: 'a' is 'halfway', expected one of surface, deep");
    }
}
