package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.RetryRule;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;

/** What an operator sets about webhooks. */
@ConfigMapping(prefix = "lapwing.webhooks")
interface HookSettings {
    /** Whether targets may lie in our own network. */
    @WithDefault("false")
    boolean allowPrivate();

    /** For connecting and for the answer. */
    @WithDefault("10s")
    Duration timeout();

    @WithDefault("5s")
    Duration firstPause();

    @WithDefault("1h")
    Duration longestPause();

    /** After so many failures a delivery is given up. */
    @WithDefault("30")
    int attempts();

    /** How many deliveries go at a time; never more than one to the same target. */
    @WithDefault("2")
    int senders();

    @WithDefault("3s")
    Duration tick();

    /** How long the log is kept. */
    @WithDefault("30d")
    Duration kept();

    default RetryRule retry() {
        return new RetryRule(firstPause(), longestPause(), longestPause(), attempts());
    }
}
