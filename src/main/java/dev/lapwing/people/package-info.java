/** Staff, roles and sign-in. Uses no other area. */
package dev.lapwing.people;
