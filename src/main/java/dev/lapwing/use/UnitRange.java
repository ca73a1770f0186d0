package dev.lapwing.use;

/**
 * A run of a depot's units in the order of their numbers, both ends included.
 *
 * @param depot code of the depot
 * @param first number of the first unit
 * @param last number of the last unit
 */
public record UnitRange(String depot, String first, String last) {}
