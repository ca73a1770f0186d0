/**
 * Tables that come and go as CSV files: read row by row in flat memory, good rows in, bad rows reported. Which tables
 * there are is for the areas to say: each gives a {@link dev.lapwing.fleet.imports.CsvTable}.
 */
package dev.lapwing.fleet.imports;
