package dev.lapwing.demo;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Settings for trying out are refused where they could do harm. */
class StartChecksTest {
    @ParameterizedTest
    @ValueSource(strings = {"127.0.0.1", "localhost", "127.1.2.3", "::1"})
    void theDemoStartsOnLoopback(String host) {
        assertThat(StartChecks.refusal(true, host, false, false)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"0.0.0.0", "::", "192.0.2.7", "no such host"})
    void theDemoDoesNotStartBeyondLoopback(String host) {
        assertThat(StartChecks.refusal(true, host, false, false))
                .hasValueSatisfying(why -> assertThat(why).contains("quarkus.http.host", host));
    }

    @Test
    void withoutTheDemoAnyAddressWillDo() {
        assertThat(StartChecks.refusal(false, "0.0.0.0", false, false)).isEmpty();
    }

    @Test
    void aFalseTimeIsForDemoAndTestOnly() {
        assertThat(StartChecks.refusal(false, "127.0.0.1", true, false))
                .hasValueSatisfying(why -> assertThat(why).contains("lapwing.clock"));
        assertThat(StartChecks.refusal(true, "127.0.0.1", true, false)).isEmpty();
        assertThat(StartChecks.refusal(false, "127.0.0.1", true, true)).isEmpty();
    }
}
