/** Holds and roof work: what is due, who has it, and how far it is. May use fleet and use. */
package dev.lapwing.care;
