/** What a tech sees and feels on a roof, one observation at a time. */
package dev.lapwing.jobs.domain.finding;
