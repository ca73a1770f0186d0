package dev.lapwing.fleet.imports;

import java.nio.file.Path;
import java.util.UUID;

/** A file was taken in for import. Told inside the transaction that writes its run down. */
record FileTaken(UUID runId, String table, Path file, String by) {}
