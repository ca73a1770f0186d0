package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Reads labelled notes and prints, per language, how they were read. Arguments: the lexicon folder, then folders of
 * {@code *.jsonl} files. The language is detected, not given.
 */
final class ReadingEvaluation {
    private ReadingEvaluation() {}

    public static void main(String[] arguments) throws IOException {
        ContactReader reader = ContactReaders.load(Path.of(arguments[0]));
        for (int i = 1; i < arguments.length; i++) {
            for (Path file : notesIn(Path.of(arguments[i]))) {
                Tally tally = tally(reader, file);
                System.out.println(tally.report(file.toString()));
                tally.wrong().forEach(System.out::println);
                System.out.println();
            }
        }
    }

    static Tally tally(ContactReader reader, Path file) throws IOException {
        Tally tally = new Tally();
        for (LabelledNote labelled : LabelledNote.readAll(file)) {
            tally.add(labelled, reader.read(labelled.note(), null, labelled.travelHeight()));
        }
        return tally;
    }

    static List<Path> notesIn(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        if (Files.isDirectory(folder)) {
            try (DirectoryStream<Path> stream = Files.newDirectoryStream(folder, "*.jsonl")) {
                stream.forEach(files::add);
            }
        }
        files.sort(null);
        return files;
    }
}
