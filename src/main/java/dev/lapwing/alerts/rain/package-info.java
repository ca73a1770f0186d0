/** When the next rain is likely at each depot: feeds, what they said last, and what was entered by hand. */
package dev.lapwing.alerts.rain;
