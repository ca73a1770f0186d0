/**
 * The job sheet's rules, plain Java: no framework, no database, the moment always handed in. One package per step of
 * the sheet; {@code docs/job-sheet.md} shows the tables and the arithmetic.
 */
package dev.lapwing.jobs.domain;
