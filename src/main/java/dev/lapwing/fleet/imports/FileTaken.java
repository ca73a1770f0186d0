package dev.lapwing.fleet.imports;

import java.nio.file.Path;
import java.util.List;
import java.util.UUID;

/**
 * A file was taken in for import. Told inside the transaction that writes its run down.
 *
 * @param header names to read its header under, in the order of the file
 */
record FileTaken(UUID runId, String table, Path file, List<String> header, String by) {}
