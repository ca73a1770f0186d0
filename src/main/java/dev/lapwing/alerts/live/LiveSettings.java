package dev.lapwing.alerts.live;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;

/** What an operator sets about the live stream. */
@ConfigMapping(prefix = "lapwing.live")
interface LiveSettings {
    /** How often a node looks for what other nodes wrote; what it wrote itself it sees at once. */
    @WithDefault("1s")
    Duration look();

    /** How often a sign of life goes to each listener. */
    @WithDefault("15s")
    Duration heartbeat();

    /** How long events are kept for those who come back. */
    @WithDefault("6h")
    Duration kept();

    /** How many may listen at a time, on each node. */
    @WithDefault("2000")
    int listeners();

    /** A connection is ended after this long, and whoever opens it again is asked again who they are. */
    @WithDefault("30m")
    Duration longest();
}
