/** How much sealant and how much time a job takes, with the arithmetic shown. */
package dev.lapwing.jobs.domain.material;
