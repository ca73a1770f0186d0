package dev.lapwing.web;

import jakarta.ws.rs.core.NewCookie;

/** Makes the cookies of the service: out of reach for scripts and for other sites. */
public final class OwnCookie {
    private OwnCookie() {}

    /** Returns a cookie that ends with the browser. */
    public static NewCookie session(String name, String value, boolean secure) {
        return lasting(name, value, NewCookie.DEFAULT_MAX_AGE, secure);
    }

    /** Returns a cookie that ends after some seconds; 0 removes it. */
    public static NewCookie lasting(String name, String value, int seconds, boolean secure) {
        return within("/", name, value, seconds, secure);
    }

    /** Returns a cookie that is sent to one path of the service and what lies beneath it. */
    public static NewCookie within(String path, String name, String value, int seconds, boolean secure) {
        return new NewCookie.Builder(name)
                .value(value)
                .path(path)
                .maxAge(seconds)
                .httpOnly(true)
                .secure(secure)
                .sameSite(NewCookie.SameSite.LAX)
                .build();
    }
}
