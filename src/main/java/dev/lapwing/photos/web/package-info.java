/** Photos over HTTP. */
package dev.lapwing.photos.web;
