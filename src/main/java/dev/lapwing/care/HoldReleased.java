package dev.lapwing.care;

import java.util.UUID;

/** A hold has ended. Told inside the transaction. */
public record HoldReleased(UUID holdId) {}
