package dev.lapwing.alerts.live;

/**
 * An event as it is sent.
 *
 * @param position its place among all events
 * @param depot code of the unit's depot
 * @param json what is told
 */
record Happening(long position, String depot, String json) {}
