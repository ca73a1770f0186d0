package dev.lapwing.alerts.domain;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Networks after the IANA special-purpose address registries (RFC 6890 and its updates), from memory. */
class HookAddressTest {
    private static final URI HTTPS = URI.create("https://hooks.haldenridge.example/strikes");

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0.0.0.0",
                "10.1.2.3",
                "100.64.0.1",
                "127.0.0.1",
                "127.8.8.8",
                "169.254.169.254",
                "172.16.0.1",
                "172.31.255.255",
                "192.0.0.8",
                "192.168.1.1",
                "198.18.0.1",
                "224.0.0.1",
                "255.255.255.255",
                "::",
                "::1",
                "::ffff:10.0.0.1",
                "64:ff9b::a00:1",
                "2001:0:1::1",
                "2002:a00:1::1",
                "fc00::1",
                "fd00:ec2::254",
                "fe80::1",
                "fec0::1",
                "ff02::1"
            })
    void anAddressThatIsNotOfThePublicInternetIsForbidden(String address) throws UnknownHostException {
        List<InetAddress> leadsTo = List.of(InetAddress.getByName(address));

        assertThat(HookAddress.forbidden(HTTPS, leadsTo, false))
                .hasValueSatisfying(why -> assertThat(why).contains("private or reserved"));
        assertThat(HookAddress.forbidden(HTTPS, leadsTo, true)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "1.1.1.1",
                "9.255.255.255",
                "11.0.0.0",
                "100.63.255.255",
                "100.128.0.0",
                "172.15.0.1",
                "172.32.0.1",
                "192.167.255.255",
                "223.255.255.255",
                "2600::1",
                "2a00::1"
            })
    void anAddressOfThePublicInternetIsNot(String address) throws UnknownHostException {
        assertThat(HookAddress.forbidden(HTTPS, List.of(InetAddress.getByName(address)), false))
                .isEmpty();
    }

    @Test
    void oneForbiddenAddressAmongSeveralIsEnough() throws UnknownHostException {
        var both = List.of(InetAddress.getByName("1.1.1.1"), InetAddress.getByName("10.0.0.1"));

        assertThat(HookAddress.forbidden(HTTPS, both, false)).isPresent();
    }

    @Test
    void withoutEncryptionOnlyThisMachineIsCalled() throws UnknownHostException {
        URI http = URI.create("http://hooks.haldenridge.example/");

        assertThat(HookAddress.forbidden(http, List.of(InetAddress.getByName("1.1.1.1")), true))
                .hasValueSatisfying(why -> assertThat(why).contains("https"));
        assertThat(HookAddress.forbidden(http, List.of(InetAddress.getByName("10.0.0.1")), true))
                .isPresent();
        assertThat(HookAddress.forbidden(http, List.of(InetAddress.getByName("127.0.0.1")), true))
                .isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "hooks",
                "ftp://a.example/",
                "file:///etc/passwd",
                "https://",
                "https:///x",
                "https://user:pw@a.example/",
                "https://a.example/#part",
                "https://a.example:0/",
                "https://a.example:99999/",
                "https://a b.example/",
                "javascript:alert(1)",
                "https://a.example/\r\nX: y"
            })
    void whatIsNoAddressOfATargetIsRefused(String text) {
        assertThat(HookAddress.malformed(text)).isPresent();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://a.example",
                "https://a.example:8443/path?x=1",
                "http://127.0.0.1:9/",
                "https://[2600::1]/x"
            })
    void whatIsOneIsTaken(String text) {
        assertThat(HookAddress.malformed(text)).isEmpty();
    }

    @Test
    void anAddressBeyondReasonIsRefused() {
        assertThat(HookAddress.malformed("https://a.example/" + "x".repeat(500)))
                .isPresent();
    }
}
