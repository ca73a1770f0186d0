package dev.lapwing.care;

import java.util.UUID;

/** A unit must not be rented from now on. Told inside the transaction. */
public record HoldOpened(UUID holdId) {}
