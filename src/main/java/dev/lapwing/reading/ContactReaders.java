package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Makes contact readers from lexicon files. */
public final class ContactReaders {
    private static final String LEXICON = ".lexicon";
    private static final String WEIGHTS = "weights.txt";

    private ContactReaders() {}

    /**
     * Loads every {@code *.lexicon} file of a folder, one language each, named by its two-letter code, and the
     * {@code weights.txt} beside them.
     *
     * @throws LexiconException when a file is not a lexicon, or there is none; the message names file, line and reason
     */
    public static ContactReader load(Path folder) {
        List<LexiconFile> files = lexicons(folder);
        NoteAnalyzer analyzer = new NoteAnalyzer();
        Vocabulary vocabulary = new Vocabulary(files, analyzer);
        return new LexiconReader(vocabulary, analyzer, Weights.read(folder.resolve(WEIGHTS), vocabulary));
    }

    /** Returns a reader that only studies notes, for learning the weights. */
    static LexiconReader withoutWeights(Path folder) {
        NoteAnalyzer analyzer = new NoteAnalyzer();
        return new LexiconReader(new Vocabulary(lexicons(folder), analyzer), analyzer, null);
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
