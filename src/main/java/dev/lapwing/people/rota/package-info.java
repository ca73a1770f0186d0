/** The duty rota: its storage, its page and its endpoints. */
package dev.lapwing.people.rota;
