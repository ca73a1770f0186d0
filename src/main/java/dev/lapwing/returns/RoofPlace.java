package dev.lapwing.returns;

import dev.lapwing.platform.Worded;

/** The nine fields of the roof plan, named for those who cannot tap it. */
public enum RoofPlace implements Worded {
    FRONT_LEFT("front left", 0, 0),
    FRONT_CENTRE("front centre", 0, 1),
    FRONT_RIGHT("front right", 0, 2),
    MIDDLE_LEFT("middle left", 1, 0),
    MIDDLE_CENTRE("middle centre", 1, 1),
    MIDDLE_RIGHT("middle right", 1, 2),
    REAR_LEFT("rear left", 2, 0),
    REAR_CENTRE("rear centre", 2, 1),
    REAR_RIGHT("rear right", 2, 2);

    private static final int FIELDS = 3;
    private final String word;
    private final int along;
    private final int across;

    RoofPlace(String word, int along, int across) {
        this.word = word;
        this.along = along;
        this.across = across;
    }

    @Override
    public String word() {
        return word;
    }

    /** Returns the share of the length at the middle of the field, from the front. */
    public double x() {
        return (along + 0.5) / FIELDS;
    }

    /** Returns the share of the width at the middle of the field, from the left. */
    public double y() {
        return (across + 0.5) / FIELDS;
    }

    /** Returns the field in which a point lies; x and y from 0 to 1. */
    public static RoofPlace at(double x, double y) {
        return values()[third(x) * FIELDS + third(y)];
    }

    private static int third(double share) {
        return Math.min(FIELDS - 1, (int) (share * FIELDS));
    }
}
