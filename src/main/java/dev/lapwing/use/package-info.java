/** The rental log and how a unit is used: out, in the yard, full-time or seasonal. May use fleet. */
package dev.lapwing.use;
