/** Tells whoever listens, as it happens, what becomes of work and holds (server-sent events). */
package dev.lapwing.alerts.live;
