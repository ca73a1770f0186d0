/** Rows of photos. */
package dev.lapwing.photos.storage;
