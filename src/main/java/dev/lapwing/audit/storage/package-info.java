/** The trail as rows, and the guards of both database engines that keep them as they were written. */
package dev.lapwing.audit.storage;
