package dev.lapwing.jobs.web;

import java.util.UUID;

/** The button that stops all work on a roof; {@code open} is whether the person who looks at it has it. */
public record ReferPart(UUID id, boolean open, String name) {}
