package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HookSignatureTest {
    /** Test cases 1, 2, 3, 4 and 6 of RFC 4231 section 4, as several public test suites quote them. */
    @ParameterizedTest
    @CsvSource({
        "0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b0b, 4869205468657265,"
                + " b0344c61d8db38535ca8afceaf0bf12b881dc200c9833da726e9376c2e32cff7",
        "4a656665, 7768617420646f2079612077616e7420666f72206e6f7468696e673f,"
                + " 5bdcc146bf60754e6a042426089575c75a003f089d2739839dec58b964ec3843",
        "aa*20, dd*50, 773ea91e36800e46854db8ebd09181a72959098b3ef8c122d9635514ced565fe",
        "0102030405060708090a0b0c0d0e0f10111213141516171819, cd*50,"
                + " 82558a389a443c0ea4cc819899f2083a85f0faa3e578f8077a2e3ff46729665b",
        "aa*131, 54657374205573696e67204c6172676572205468616e20426c6f636b2d53697a65204b6579202d2048617368204b6579204669727374,"
                + " 60e431591ee0b67f0d8a26aacbf5b77f8e0bc6213728c5140546040f0ee37f54"
    })
    void thePublishedTestVectorsHold(String key, String message, String mac) {
        assertThat(HookSignature.hmac(bytes(key), bytes(message))).isEqualTo(mac);
        assertThat(byHand(bytes(key), bytes(message))).isEqualTo(mac);
    }

    @Test
    void theTimestampAndTheBodyAreSignedWithAPointBetween() {
        String body = "{\"event\":\"strike\",\"unit\":\"HR-é\"}";

        assertThat(HookSignature.of("a secret", 1_777_000_000L, body))
                .isEqualTo(byHand(
                        "a secret".getBytes(StandardCharsets.UTF_8),
                        ("1777000000." + body).getBytes(StandardCharsets.UTF_8)))
                .isNotEqualTo(HookSignature.of("a secret", 1_777_000_001L, body))
                .isNotEqualTo(HookSignature.of("another secret", 1_777_000_000L, body));
    }

    private static byte[] bytes(String hex) {
        int times = hex.indexOf('*');
        return HexFormat.of()
                .parseHex(times < 0 ? hex : hex.substring(0, times).repeat(Integer.parseInt(hex.substring(times + 1))));
    }

    /** HMAC as RFC 2104 section 2 defines it, from the hash alone. */
    static String byHand(byte[] key, byte[] message) {
        byte[] block = new byte[64];
        byte[] start = key.length > block.length ? sha256(key) : key;
        System.arraycopy(start, 0, block, 0, start.length);
        byte[] inner = sha256(padded(block, 0x36), message);
        return HexFormat.of().formatHex(sha256(padded(block, 0x5c), inner));
    }

    private static byte[] padded(byte[] block, int pad) {
        byte[] padded = block.clone();
        for (int i = 0; i < padded.length; i++) {
            padded[i] ^= (byte) pad;
        }
        return padded;
    }

    private static byte[] sha256(byte[]... parts) {
        try {
            var digest = MessageDigest.getInstance("SHA-256");
            for (byte[] part : parts) {
                digest.update(part);
            }
            return digest.digest();
        } catch (NoSuchAlgorithmException e) {
            throw new AssertionError(e);
        }
    }
}
