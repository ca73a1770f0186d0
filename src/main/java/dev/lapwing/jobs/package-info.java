/** The job sheet: what is found on a roof, what follows from it, and who signs for it. May use care and fleet. */
package dev.lapwing.jobs;
