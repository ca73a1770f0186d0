/** Sealant only of the roof's own membrane system, and only on a surface that holds it. */
package dev.lapwing.jobs.domain.sealant;
