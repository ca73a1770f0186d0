package dev.lapwing.photos.domain;

/**
 * Judges what follows the end of a picture in its file. Cameras append a short film or more pictures, which are dropped;
 * a file that goes on with anything else is two things at once and is refused.
 */
final class AppendedData {
    private AppendedData() {}

    /** Refuses what follows a picture unless it is padding or something that cameras append. */
    static void check(Bytes rest) {
        int first = 0;
        while (first < rest.size() && rest.u8(first) == 0) {
            first++;
        }
        Bytes appended = rest.from(first);
        boolean harmless = appended.size() == 0
                || appended.startsWith("\u00ff\u00d8\u00ff")
                || film(rest.from(Math.max(0, first - 3)))
                || appended.size() > 4 && appended.text(appended.size() - 4, 4).equals("SEFT");
        if (!harmless) {
            throw BadPicture.otherType("goes on with something else after the picture; save it anew as a picture");
        }
    }

    /** Says whether a film begins here, or up to three zeros later: its length comes first and may begin with zeros. */
    private static boolean film(Bytes rest) {
        for (int at = 0; at <= 3 && at + 8 <= rest.size(); at++) {
            if (rest.text(at + 4, 4).equals("ftyp")) {
                return true;
            }
        }
        return false;
    }

    /** Refuses anything after a picture but padding. */
    static void checkNone(Bytes rest) {
        for (int i = 0; i < rest.size(); i++) {
            if (rest.u8(i) != 0) {
                throw BadPicture.otherType("goes on with something else after the picture; save it anew as a picture");
            }
        }
    }
}
