package dev.lapwing.web;

/** Knows how far the stream of what happens has come. */
public interface LivePlace {
    /** Returns the place of the newest event; whatever was told up to it can be read in the database. */
    long now();
}
