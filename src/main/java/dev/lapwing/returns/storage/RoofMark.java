package dev.lapwing.returns.storage;

import jakarta.persistence.Embeddable;

/** A place on the roof plan that the desk marked: x along the length from the front, y across from the left, 0 to 1. */
@Embeddable
public class RoofMark {
    public double x;
    public double y;

    /** What is there, in the desk's words. */
    public String kind;
}
