/** Who is on duty when; plain Java. */
package dev.lapwing.people.domain;
