/** Lapwing: roof care for a rental fleet. */
package dev.lapwing;
