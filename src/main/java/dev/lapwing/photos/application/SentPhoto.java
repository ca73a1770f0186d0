package dev.lapwing.photos.application;

import java.nio.file.Path;

/**
 * A file as it was sent.
 *
 * @param name the name the sender gave it, or null; only used to tell the sender which file is meant
 */
public record SentPhoto(String name, Path file) {}
