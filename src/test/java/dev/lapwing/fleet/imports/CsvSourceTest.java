package dev.lapwing.fleet.imports;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.FieldErrors;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A file is read row by row; what breaks one row breaks no other. Form of the file: RFC 4180. */
class CsvSourceTest {
    private static final CsvTable TABLE = new TwoColumns();

    @Test
    void rowsAreNumberedByTheLinesOfTheFile() throws IOException {
        List<CsvRow> rows = read("name,note\na,\"one\ntwo\nthree\"\n\nb,four\n");
        assertThat(rows)
                .extracting(CsvRow::line, row -> row.text("name"), row -> row.text("note"))
                .containsExactly(tuple(2, "a", "one\ntwo\nthree"), tuple(6, "b", "four"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"\n", "\r\n"})
    void bothEndsOfLineWillDo(String end) throws IOException {
        List<CsvRow> rows = read("name,note" + end + "a,1" + end + "b,2");
        assertThat(rows)
                .extracting(CsvRow::line, row -> row.text("note"))
                .containsExactly(tuple(2, "1"), tuple(3, "2"));
    }

    @Test
    void aByteOrderMarkIsNoPartOfTheFirstColumn() throws IOException {
        assertThat(read("\uFEFFname,note\na,1\n"))
                .extracting(row -> row.text("name"))
                .containsExactly("a");
    }

    @Test
    void semicolonsSeparateWhenTheHeaderHasThem() throws IOException {
        List<CsvRow> rows = read("note;name;\"a,b,c\"\n1,5;a;x\n");
        assertThat(rows).extracting(row -> row.text("note")).containsExactly("1,5");
        assertThat(rows).allSatisfy(row -> assertThat(row.decimalComma()).isTrue());
    }

    @Test
    void quotesAreDoubledInsideQuotes() throws IOException {
        assertThat(read("name,note\na,\"say \"\"hi\"\", twice\"\n"))
                .extracting(row -> row.text("note"))
                .containsExactly("say \"hi\", twice");
    }

    @Test
    void columnsAreFoundByNameInAnyOrderAndCase() throws IOException {
        List<CsvRow> rows = read("other, NOTE ,Name\nx,1,a\n");
        assertThat(rows)
                .extracting(row -> row.text("name"), row -> row.text("note"))
                .containsExactly(tuple("a", "1"));
    }

    @Test
    void aRowThatBreaksTheQuotingIsRejectedAndTheNextLineIsRead() throws IOException {
        List<CsvRow> rows = read("name,note\na,\"x\"y\nb,2\nc,\"never closed\nd,4\ne,\"5\"\n");
        assertThat(rows)
                .extracting(CsvRow::line, CsvRow::good)
                .containsExactly(tuple(2, false), tuple(3, true), tuple(4, false), tuple(5, true), tuple(6, true));
        assertThat(rows.get(4).text("note")).isEqualTo("5");
    }

    @Test
    void aQuoteThatIsNeverClosedCostsOneRow() throws IOException {
        String rest = "b,2\n".repeat(400_000);
        List<CsvRow> rows = read("name,note\na,\"never closed\n" + rest);
        assertThat(rows).hasSize(400_001);
        assertThat(rows).filteredOn(row -> !row.good()).extracting(CsvRow::line).containsExactly(2);
        assertThat(rows.get(400_000).line()).isEqualTo(400_002);
    }

    @Test
    void aLineThatIsFarTooLongCostsOneRow() throws IOException {
        List<CsvRow> rows = read("name,note\na," + "x".repeat(3_000_000) + "\nb,2\n");
        assertThat(rows).extracting(CsvRow::line, CsvRow::good).containsExactly(tuple(2, false), tuple(3, true));
    }

    @Test
    void aRowWithOtherBytesThanUtf8IsRejected() throws IOException {
        var file = "name,note\na,\u00e9t\u00e9\nb,2\n".getBytes(StandardCharsets.ISO_8859_1);
        List<CsvRow> rows = read(file);
        assertThat(rows.get(0).errors())
                .extracting(CellError::field, CellError::message)
                .containsExactly(tuple("row", "is not UTF-8 text"));
        assertThat(rows.get(1).good()).isTrue();
    }

    @Test
    void aRowHasAsManyCellsAsTheHeader() throws IOException {
        List<CsvRow> rows = read("name,note\na\nb,2,3\nc,4\n");
        assertThat(rows).extracting(CsvRow::good).containsExactly(false, false, true);
    }

    @Test
    void aNulCharacterIsRejected() throws IOException {
        assertThat(read("name,note\na,x\0y\n")).extracting(CsvRow::good).containsExactly(false);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "\n", "note\n1\n", "name,name\na,b\n", "\"name,note\n", "name,note\ra,1\rb,2\r"})
    void aHeaderThatNoRowCanBeReadByIsRefused(String file) throws IOException {
        assertThat(wrongWithHeader(file.getBytes(StandardCharsets.UTF_8))).isNotEmpty();
    }

    @Test
    void aMissingColumnIsNamed() throws IOException {
        assertThat(wrongWithHeader("note\n1\n".getBytes(StandardCharsets.UTF_8)))
                .extracting(FieldError::field)
                .containsExactly("name");
    }

    private static List<FieldError> wrongWithHeader(byte[] file) throws IOException {
        var errors = new FieldErrors();
        try (var source = CsvSource.open(new ByteArrayInputStream(file), TABLE, null, errors)) {
            assertThat(source.header()).isNotNull();
        }
        return errors.list();
    }

    static List<CsvRow> read(String file) throws IOException {
        return read(file.getBytes(StandardCharsets.UTF_8));
    }

    static List<CsvRow> read(byte[] file) throws IOException {
        var errors = new FieldErrors();
        List<CsvRow> rows = new ArrayList<>();
        try (var source = CsvSource.open(new ByteArrayInputStream(file), TABLE, null, errors)) {
            assertThat(errors.list()).isEmpty();
            for (CsvRow row = source.next(); row != null; row = source.next()) {
                rows.add(row);
            }
            assertThat(source.bytesRead()).isBetween((long) file.length - 3, (long) file.length);
        }
        return rows;
    }

    /** A table that only names its columns. */
    private static final class TwoColumns implements CsvTable {
        @Override
        public String name() {
            return "things";
        }

        @Override
        public List<Column> columns() {
            return List.of(new Column("name", true), new Column("note", false));
        }

        @Override
        public void store(List<CsvRow> rows, Instant now, String by) {
            throw new UnsupportedOperationException();
        }

        @Override
        public ExportPage page(String cursor) {
            throw new UnsupportedOperationException();
        }
    }
}
