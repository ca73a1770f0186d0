package dev.lapwing.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LexiconFileTest {
    @TempDir
    Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "branch|no section before",
                "[overheads]|unknown section",
                "[overhead|without closing bracket",
                "[roof]\\nvent,, hatch|nothing between two commas",
                "[roof]\\nvent = hatch|belongs into a pattern section",
                "[roof]\\n!!!|no letters in",
                "[pattern strike]\\none|two parts or more",
                "[pattern strike]\\none <rooof> less|unknown sign",
                "[pattern strike]\\none <roof less|without closing bracket",
                "[sentences]\\nnothing|name = text",
                "[sentences]\\nnothin = x|unknown sentence",
                "[numbers]\\ntwo|word = number",
                "[numbers]\\ntwo = zwei|word = number",
            })
    void isRefusedWithLineAndReason(String text, String reason) throws IOException {
        String added = text.replace("\\n", "\n");
        long line = Files.lines(Readers.FOLDER.resolve("en.lexicon")).count()
                + added.lines().count();
        boolean first = reason.startsWith("no section");
        write(first ? added : Files.readString(Readers.FOLDER.resolve("en.lexicon")) + added);
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("en.lexicon, line " + (first ? 1 : line))
                .hasMessageContaining(reason);
    }

    @Test
    void isRefusedWithoutItsSentences() throws IOException {
        write("[roof]\nvent\n");
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("is missing");
    }

    @Test
    void isRefusedWhenNotUtf8() throws IOException {
        Files.write(folder.resolve("en.lexicon"), "[roof]\nto\u00eet".getBytes(StandardCharsets.ISO_8859_1));
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("not UTF-8");
    }

    @Test
    void anEmptyFolderIsRefused() {
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("no *.lexicon file");
    }

    @Test
    void aWordAddedByAnOperatorIsRead() throws IOException {
        String note = "The flumbax scraped along the hangarette.";
        assertThat(Readers.SHIPPED.read(note, "en", null).verdict()).isNotEqualTo(ContactVerdict.CONTACT);
        write(Files.readString(Readers.FOLDER.resolve("en.lexicon")) + "\n[roof]\nflumbax\n[overhead]\nhangarette\n");
        copy("concepts.txt");
        copy("weights.txt");
        assertThat(ContactReaders.load(folder).read(note, "en", null).verdict()).isEqualTo(ContactVerdict.CONTACT);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "roof said|a weight is written",
                "trait roof said = much|not a number",
                "trait roofs said = 1|unknown trait",
                "words en roof = 1|neither trait nor word",
                "word roof = 1|word xx form"
            })
    void weightsAreRefusedWithLineAndReason(String line, String reason) throws IOException {
        write(Files.readString(Readers.FOLDER.resolve("en.lexicon")));
        copy("concepts.txt");
        Files.writeString(folder.resolve("weights.txt"), "# weights\n" + line + "\n");
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("weights.txt, line 2")
                .hasMessageContaining(reason);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {
                "branch: bough | rama | branche;2;the first line names the columns",
                "languages: en | es | fr\\nbranch bough;3;a meaning is written",
                "languages: en | es | fr\\nbranch: bough | rama;3;2 columns where there are 3",
                "languages: en | es | fr\\nbranch: b* | rama | x;3;after three letters or more",
                "languages: en | es | fr\\na: b | c | d\\na: e | f | g;4;stands in an earlier line"
            })
    void meaningsAreRefusedWithLineAndReason(String text, int line, String reason) throws IOException {
        write(Files.readString(Readers.FOLDER.resolve("en.lexicon")));
        copy("weights.txt");
        Files.writeString(folder.resolve("concepts.txt"), "# meanings\n" + text.replace("\\n", "\n"));
        assertThatThrownBy(() -> ContactReaders.load(folder))
                .isInstanceOf(LexiconException.class)
                .hasMessageContaining("concepts.txt, line " + line)
                .hasMessageContaining(reason);
    }

    private void copy(String file) throws IOException {
        Files.copy(Readers.FOLDER.resolve(file), folder.resolve(file));
    }

    private void write(String text) throws IOException {
        Files.writeString(folder.resolve("en.lexicon"), text);
    }
}
