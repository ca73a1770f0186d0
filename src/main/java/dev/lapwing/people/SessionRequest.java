package dev.lapwing.people;

import io.quarkus.security.identity.request.BaseAuthenticationRequest;

/** A request to accept the token of a session cookie. */
final class SessionRequest extends BaseAuthenticationRequest {
    private final String token;

    SessionRequest(String token) {
        this.token = token;
    }

    String token() {
        return token;
    }
}
