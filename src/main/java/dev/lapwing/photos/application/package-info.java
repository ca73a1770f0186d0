/** Taking photos in, and keeping their files. */
package dev.lapwing.photos.application;
