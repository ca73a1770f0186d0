/** Tells other programs of the house of strikes, holds and releases (webhooks). */
package dev.lapwing.alerts.hooks;
