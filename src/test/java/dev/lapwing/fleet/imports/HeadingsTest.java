package dev.lapwing.fleet.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Headings of other systems are fitted to the columns of a table. */
class HeadingsTest {
    private static final CsvTable TABLE = new CsvTable() {
        @Override
        public String name() {
            return "things";
        }

        @Override
        public List<Column> columns() {
            return List.of(new Column("number", true), new Column("lengthMetres", true), new Column("note", false));
        }

        @Override
        public void store(List<CsvRow> rows, Instant now, String by) {
            throw new UnsupportedOperationException();
        }

        @Override
        public ExportPage page(String cursor) {
            throw new UnsupportedOperationException();
        }
    };

    private final Headings headings = new Headings(TABLE);

    @Test
    void caseSpacesHyphensAndUnderscoresDoNotMatter() {
        assertThat(headings.guess(List.of(" NUMBER", "Length metres", "length_metres", "colour")))
                .containsExactly("number", "lengthMetres", "", "");
    }

    @Test
    void neededColumnsThatNothingStandsForAreMissing() {
        assertThat(headings.missing(List.of("note", "number"))).containsExactly("lengthMetres");
        assertThat(headings.missing(List.of("lengthMetres", "number"))).isEmpty();
    }

    @Test
    void aColumnLeftOutIsNotTakenForTheColumnOfItsName() {
        assertThat(Headings.renamed(List.of("number", "note"), List.of("number", "")))
                .containsExactly("number", "note (left out)");
    }
}
