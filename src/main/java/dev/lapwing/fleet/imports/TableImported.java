package dev.lapwing.fleet.imports;

import java.time.Instant;

/**
 * A file was imported to its end. Told after its last rows are stored, in no transaction.
 *
 * @param table word of the table, such as {@code units}
 * @param accepted how many rows went in
 */
public record TableImported(String table, int accepted, Instant at, String by) {}
