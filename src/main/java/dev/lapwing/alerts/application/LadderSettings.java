package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.LadderPace;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** What an operator sets about the ladder of a strike. */
@ConfigMapping(prefix = "lapwing.escalation")
interface LadderSettings {
    @WithDefault("15m")
    Duration nextOnDuty();

    @WithDefault("45m")
    Duration coordinators();

    @WithDefault("2h")
    Duration lastResort();

    @WithDefault("1h")
    Duration again();

    @WithDefault("1h")
    Duration start();

    /** Address of the fleet for strikes that nobody answers. */
    Optional<String> address();

    /** Language of mails to addresses that are nobody's own. */
    @WithDefault("en")
    String language();

    /** How often the ladder is looked at, as the schedule reads it. */
    @WithDefault("20s")
    String look();

    /** What differs at a depot, by its code. */
    Map<String, OfDepot> depot();

    /** What may differ at a depot. */
    interface OfDepot {
        Optional<Duration> nextOnDuty();

        Optional<Duration> coordinators();

        Optional<Duration> lastResort();

        Optional<Duration> again();

        Optional<Duration> start();

        Optional<String> address();
    }

    /** Returns how fast the ladder is climbed at a depot. */
    default LadderPace pace(String depotCode) {
        OfDepot own = depot().get(depotCode);
        if (own == null) {
            return new LadderPace(nextOnDuty(), coordinators(), lastResort(), again(), start());
        }
        return new LadderPace(
                own.nextOnDuty().orElse(nextOnDuty()),
                own.coordinators().orElse(coordinators()),
                own.lastResort().orElse(lastResort()),
                own.again().orElse(again()),
                own.start().orElse(start()));
    }

    /** Returns the address of last resort of a depot, if there is one. */
    default Optional<String> addressOf(String depotCode) {
        OfDepot own = depot().get(depotCode);
        return own == null ? address() : own.address().or(this::address);
    }
}
