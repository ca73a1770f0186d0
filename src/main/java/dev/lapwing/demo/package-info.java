/**
 * The invented fleet of Halden Ridge, for trying the service out: people, units, a year of rentals and work. Loaded into
 * an empty database on request; writes the tables of all areas directly, since history must not send mails.
 */
package dev.lapwing.demo;
