/** Units, their roofs, and depots. Uses no other area; the events here are what the others hear of a unit. */
package dev.lapwing.fleet;
