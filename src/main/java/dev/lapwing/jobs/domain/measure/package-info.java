/** Lengths and volumes with exact factors between metric and US customary units. */
package dev.lapwing.jobs.domain.measure;
