/** The outbox as it is stored. */
package dev.lapwing.alerts.storage;
