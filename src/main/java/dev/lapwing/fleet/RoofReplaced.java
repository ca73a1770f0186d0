package dev.lapwing.fleet;

import java.time.LocalDate;

/**
 * A unit was given a new roof.
 *
 * @param on the day it was put on
 * @param roof what is known of it; its own day is not read
 * @param reason why
 */
record RoofReplaced(LocalDate on, UnitRequest.RoofRequest roof, String reason) {}
