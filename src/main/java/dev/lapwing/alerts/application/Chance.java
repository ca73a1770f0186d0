package dev.lapwing.alerts.application;

/** Source of random numbers. */
interface Chance {
    /** Returns a number from 0 to below 1. */
    double next();
}
