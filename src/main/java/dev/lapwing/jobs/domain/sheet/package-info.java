/** The order of the job sheet: cautions, wash, drying clock, and what a sign-off must say. */
package dev.lapwing.jobs.domain.sheet;
