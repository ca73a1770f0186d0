package dev.lapwing.jobs.domain;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads files of {@code shared/} as the tests run in the project's folder. */
public final class SharedFiles {
    private SharedFiles() {}

    public static String read(String name) {
        try {
            return Files.readString(Path.of("shared").resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
