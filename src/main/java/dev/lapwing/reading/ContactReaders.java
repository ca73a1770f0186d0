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
    private static final String CONCEPTS = "concepts.txt";

    private ContactReaders() {}

    /**
     * Loads every {@code *.lexicon} file of a folder, one language each, named by its two-letter code, and the
     * {@code concepts.txt} and {@code weights.txt} beside them.
     *
     * @throws LexiconException when a file is not a lexicon, or there is none; the message names file, line and reason
     */
    public static ContactReader load(Path folder) {
        List<LexiconFile> files = lexicons(folder);
        NoteAnalyzer analyzer = new NoteAnalyzer();
        Vocabulary vocabulary = new Vocabulary(files, analyzer);
        Weights weights = Weights.read(folder.resolve(WEIGHTS), vocabulary, concepts(folder, files));
        return new LexiconReader(vocabulary, analyzer, weights);
    }

    private static Concepts concepts(Path folder, List<LexiconFile> files) {
        return Concepts.read(
                folder.resolve(CONCEPTS),
                files.stream().map(LexiconFile::language).toList());
    }

    /** A reader that only studies notes, with what names their traits: for learning the weights. */
    record Study(LexiconReader reader, Meanings meanings, TraitNames names) {}

    static Study withoutWeights(Path folder) {
        NoteAnalyzer analyzer = new NoteAnalyzer();
        List<LexiconFile> files = lexicons(folder);
        Vocabulary vocabulary = new Vocabulary(files, analyzer);
        Concepts concepts = concepts(folder, files);
        return new Study(
                new LexiconReader(vocabulary, analyzer, null),
                new Meanings(concepts, vocabulary),
                new TraitNames(concepts));
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
