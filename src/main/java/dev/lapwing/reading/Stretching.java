package dev.lapwing.reading;

/** Letters typed three times or more for effect: "noooo". */
final class Stretching {
    private static final int STRETCHED = 3;

    private Stretching() {}

    /** Returns a form with each stretched letter once; letters typed twice stay. */
    static String removedFrom(String form) {
        StringBuilder kept = new StringBuilder(form.length());
        for (int from = 0; from < form.length(); ) {
            int to = from;
            while (to < form.length() && form.charAt(to) == form.charAt(from)) {
                to++;
            }
            kept.append(form, from, to - from >= STRETCHED ? from + 1 : to);
            from = to;
        }
        return kept.length() == form.length() ? form : kept.toString();
    }
}
