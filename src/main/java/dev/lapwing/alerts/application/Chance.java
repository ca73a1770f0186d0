package dev.lapwing.alerts.application;

/** Source of random numbers. */
public interface Chance {
    /** Returns a number from 0 to below 1. */
    double next();
}
