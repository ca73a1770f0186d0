/** Rules of mail: states, pauses, safe header text. Plain Java. */
package dev.lapwing.alerts.domain;
