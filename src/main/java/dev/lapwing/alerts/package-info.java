/** Outbox, mail and escalation. May use care and people. */
package dev.lapwing.alerts;
