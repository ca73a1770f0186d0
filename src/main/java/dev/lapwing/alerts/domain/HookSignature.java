package dev.lapwing.alerts.domain;

import java.nio.charset.StandardCharsets;
import java.security.GeneralSecurityException;
import java.util.HexFormat;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/** Signs what is sent to webhooks, by HMAC-SHA-256 (RFC 2104, FIPS 180-4). */
public final class HookSignature {
    private static final String ALGORITHM = "HmacSHA256";

    private HookSignature() {}

    /**
     * Returns the signature of a delivery as 64 hex digits.
     *
     * @param secret of the target; its UTF-8 bytes are the key
     * @param timestamp seconds since 1970 in UTC, as sent beside the signature
     * @param body as sent
     */
    public static String of(String secret, long timestamp, String body) {
        return hmac(bytes(secret), bytes(timestamp + "." + body));
    }

    static String hmac(byte[] key, byte[] message) {
        try {
            Mac mac = Mac.getInstance(ALGORITHM);
            mac.init(new SecretKeySpec(key, ALGORITHM));
            return HexFormat.of().formatHex(mac.doFinal(message));
        } catch (GeneralSecurityException e) {
            throw new IllegalStateException("every Java platform has " + ALGORITHM, e);
        }
    }

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
