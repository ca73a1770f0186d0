/** What reads across all areas: unit history, figures, exports. Reads only. */
package dev.lapwing.record;
