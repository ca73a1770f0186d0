/** When the next rain is likely; plain Java. */
package dev.lapwing.alerts.domain.rain;
