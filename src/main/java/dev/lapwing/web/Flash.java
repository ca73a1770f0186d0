package dev.lapwing.web;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * One sentence that the next page shows, carried in a cookie of its own.
 *
 * @param refused whether it says that something was not done
 */
public record Flash(boolean refused, String words) {
    static final String COOKIE = "lapwing-flash";
    private static final int LONGEST = 600;

    String encoded() {
        String kept = words.length() <= LONGEST ? words : words.substring(0, LONGEST);
        String plain = (refused ? "!" : "=") + kept;
        return Base64.getUrlEncoder().withoutPadding().encodeToString(plain.getBytes(StandardCharsets.UTF_8));
    }

    /** Reads what {@link #encoded} wrote; anything else is read as nothing. */
    static Optional<Flash> decoded(String value) {
        try {
            String plain = new String(Base64.getUrlDecoder().decode(value), StandardCharsets.UTF_8);
            return plain.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new Flash(plain.charAt(0) == '!', plain.substring(1)));
        } catch (IllegalArgumentException notOurs) {
            return Optional.empty();
        }
    }
}
