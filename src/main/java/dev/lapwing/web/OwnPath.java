package dev.lapwing.web;

/** Keeps a way back that came with a request inside the service. */
public final class OwnPath {
    private OwnPath() {}

    /** Returns the path, or the other one when it is missing or would lead out of the service. */
    public static String of(String path, String otherwise) {
        boolean own = path != null
                && path.startsWith("/")
                && !path.startsWith("//")
                && path.chars().allMatch(c -> c > ' ' && c < 0x7f && c != '\\');
        return own ? path : otherwise;
    }
}
