/** Which cleaner may touch which roof surface. */
package dev.lapwing.jobs.domain.surface;
