package dev.lapwing.fleet.imports;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Tells files apart. */
final class FileHash {
    private FileHash() {}

    /** Returns the SHA-256 of a file's bytes as 64 hex digits. */
    static String of(Path file) throws IOException {
        try (InputStream bytes = Files.newInputStream(file)) {
            var digest = MessageDigest.getInstance("SHA-256");
            new DigestInputStream(bytes, digest).transferTo(OutputStream.nullOutputStream());
            return HexFormat.of().formatHex(digest.digest());
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }
}
