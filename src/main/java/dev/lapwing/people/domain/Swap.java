package dev.lapwing.people.domain;

import java.time.LocalDate;

/** One person takes the turns of another that begin on a date. */
public record Swap(LocalDate date, String giver, String taker) {}
