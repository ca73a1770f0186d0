/** Who may end a hold, and when. A hold never ends by itself. */
package dev.lapwing.jobs.domain.release;
