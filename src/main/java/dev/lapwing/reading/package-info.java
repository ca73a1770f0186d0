/**
 * Contact reading: what the free text of a return report says about overhead contact. Pure Java; uses no other area
 * and no framework.
 */
package dev.lapwing.reading;
