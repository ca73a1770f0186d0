/** What is told to whom, and how it gets there. */
package dev.lapwing.alerts.application;
