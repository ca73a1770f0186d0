package dev.lapwing.web;

/** The words of the roles, as endpoints demand them. */
public final class Roles {
    /** Runs the due list: sees and changes all work. */
    public static final String COORDINATOR = "coordinator";
    /** Takes units back and flags strikes. */
    public static final String DESK = "desk";
    /** Does the work on the roofs. */
    public static final String TECH = "tech";

    private Roles() {}
}
