package dev.lapwing.fleet.imports;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What is written to a file is read from it again as it was, and no cell can run as a formula. */
class CsvRoundTripTest {
    private static final String FORMULA_SIGNS = "=+-@\t\r";

    @Provide
    Arbitrary<String> text() {
        Arbitrary<String> plain = Arbitraries.strings().all().ofMaxLength(20);
        Arbitrary<String> nasty = Arbitraries.strings()
                .withChars('\'', '=', '+', '-', '@', '"', ',', ';', '\n', '\r', '\t', ' ', 'a', '\u00e9', '\uFEFF')
                .ofMaxLength(8);
        return Arbitraries.oneOf(plain, nasty)
                .map(String::strip)
                .filter(text -> text.indexOf('\0') < 0 && encodable(text));
    }

    @Provide
    Arbitrary<List<List<String>>> rows() {
        Arbitrary<String> name = text().filter(text -> !text.isEmpty());
        return Combinators.combine(name, text()).as(List::of).list().ofMaxSize(6);
    }

    @Property(tries = 1000)
    void everyTextComesBackAsItWas(@ForAll("rows") List<List<String>> rows, @ForAll boolean semicolon)
            throws IOException {
        List<List<String>> back = new ArrayList<>();
        for (CsvRow row : CsvSourceTest.read(written(rows, semicolon ? ';' : ','))) {
            assertThat(row.errors()).isEmpty();
            String note = row.text("note");
            back.add(List.of(row.text("name"), note == null ? "" : note));
        }
        assertThat(back).isEqualTo(rows);
    }

    @Property(tries = 1000)
    void noCellBeginsLikeAFormula(@ForAll("text") String text) {
        String cell = Formulas.guard(text);
        assertThat(cell.isEmpty() || FORMULA_SIGNS.indexOf(cell.charAt(0)) < 0).isTrue();
        assertThat(Formulas.unguard(cell)).isEqualTo(text);
    }

    private static byte[] written(List<List<String>> rows, char delimiter) throws IOException {
        var file = new ByteArrayOutputStream();
        var writer = new CsvWriter(file, delimiter);
        writer.write(List.of("name", "note"));
        for (List<String> row : rows) {
            writer.write(row);
        }
        writer.flush();
        return file.toByteArray();
    }

    private static boolean encodable(String text) {
        return new String(text.getBytes(StandardCharsets.UTF_8), StandardCharsets.UTF_8).equals(text);
    }
}
