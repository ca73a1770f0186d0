/** Reads the reference data of {@code shared/}; a bad file is refused with its line and the reason. */
package dev.lapwing.jobs.domain.data;
