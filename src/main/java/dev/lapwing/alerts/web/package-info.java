/** The outbox over HTTP. */
package dev.lapwing.alerts.web;
