/** Pictures of roofs: taken in, made harmless, kept and shown. Uses fleet. */
package dev.lapwing.photos;
