package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Makes contact readers from lexicon files. */
public final class ContactReaders {
    private static final String LEXICON = ".lexicon";

    private ContactReaders() {}

    /**
     * Loads every {@code *.lexicon} file of a folder, one language each, named by its two-letter code.
     *
     * @throws LexiconException when a file is not a lexicon, or there is none; the message names file, line and reason
     */
    public static ContactReader load(Path folder) {
        List<LexiconFile> files = lexicons(folder);
        NoteAnalyzer analyzer = new NoteAnalyzer();
        return new LexiconReader(new Vocabulary(files, analyzer), analyzer);
    }

    static List<LexiconFile> lexicons(Path folder) {
        List<LexiconFile> files;
        try (Stream<Path> paths = Files.list(folder)) {
            files = paths.filter(path -> path.toString().endsWith(LEXICON))
                    .sorted()
                    .map(LexiconFile::read)
                    .toList();
        } catch (IOException e) {
            throw new LexiconException(folder, 0, "cannot be listed: " + e.getMessage());
        }
        if (files.isEmpty()) {
            throw new LexiconException(folder, 0, "no *" + LEXICON + " file in this folder");
        }
        return files;
    }
}
