/** What the bytes of a picture say before anything is decoded. Plain Java. */
package dev.lapwing.photos.domain;
