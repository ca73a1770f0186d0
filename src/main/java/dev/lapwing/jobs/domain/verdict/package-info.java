/** From findings to a verdict, the work that follows, and whether the unit stays on hold. */
package dev.lapwing.jobs.domain.verdict;
