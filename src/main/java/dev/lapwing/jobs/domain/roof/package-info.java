/**
 * The drawn top view of a roof. Coordinates: x runs along the length from 0 at the front to 1 at the rear, y across from
 * 0 at the left to 1 at the right, seen from above with the front ahead.
 */
package dev.lapwing.jobs.domain.roof;
