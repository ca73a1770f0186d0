package dev.lapwing.photos.domain;

/** A file that is not taken as a picture; the message reads on after the name of the file. */
public final class BadPicture extends RuntimeException {
    /** Why it is not taken. */
    public enum Why {
        /** It is something else, or a kind of picture that is not taken. */
        OTHER_TYPE,
        TOO_LARGE,
        /** It is a picture, and broken. */
        DAMAGED
    }

    private static final long serialVersionUID = 1L;
    private final Why why;

    private BadPicture(Why why, String message) {
        super(message);
        this.why = why;
    }

    public static BadPicture otherType(String message) {
        return new BadPicture(Why.OTHER_TYPE, message);
    }

    public static BadPicture tooLarge(String message) {
        return new BadPicture(Why.TOO_LARGE, message);
    }

    public static BadPicture damaged(String message) {
        return new BadPicture(Why.DAMAGED, message);
    }

    static BadPicture cutOff() {
        return damaged("is cut off: its end is missing");
    }

    public Why why() {
        return why;
    }
}
