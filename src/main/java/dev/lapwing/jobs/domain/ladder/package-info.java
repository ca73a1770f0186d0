/** How to set a ladder for the height of a unit. */
package dev.lapwing.jobs.domain.ladder;
