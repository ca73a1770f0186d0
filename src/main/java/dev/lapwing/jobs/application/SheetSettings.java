package dev.lapwing.jobs.application;

import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.jobs.domain.material.BeadSettings;
import dev.lapwing.jobs.domain.measure.Length;
import dev.lapwing.jobs.domain.measure.Volume;
import dev.lapwing.jobs.domain.sheet.DryingClock;
import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.inject.Inject;
import jakarta.inject.Singleton;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import org.eclipse.microprofile.config.Config;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What an operator sets for all sheets, checked at start. */
@Startup
@Singleton
class SheetSettings {
    private static final Map<TaskKind, Duration> USUAL_TIMES = Map.of(
            TaskKind.WASH, Duration.ofHours(1),
            TaskKind.INSPECTION, Duration.ofHours(2),
            TaskKind.STRIKE_INSPECTION, Duration.ofHours(1),
            TaskKind.TOUCH_UP, Duration.ofHours(1),
            TaskKind.REWORK, Duration.ofHours(3),
            TaskKind.SEALANT_REPLACEMENT, Duration.ofHours(8),
            TaskKind.MEMBRANE_REPAIR, Duration.ofHours(3),
            TaskKind.CONFIRM_MEMBRANE, Duration.ofMinutes(30));

    @ConfigProperty(name = "lapwing.sheet.drying-time", defaultValue = "4h")
    Duration dryingTime;

    @ConfigProperty(name = "lapwing.sheet.wash-needed", defaultValue = "false")
    boolean washNeeded;

    @ConfigProperty(name = "lapwing.bead.width-mm", defaultValue = "25")
    double beadWidth;

    @ConfigProperty(name = "lapwing.bead.height-mm", defaultValue = "6")
    double beadHeight;

    @ConfigProperty(name = "lapwing.bead.waste-percent", defaultValue = "15")
    int wastePercent;

    @ConfigProperty(name = "lapwing.bead.unmeasured-cm", defaultValue = "30")
    double unmeasured;

    @ConfigProperty(name = "lapwing.bead.tube-ml", defaultValue = "300")
    double tube;

    @Inject
    Config config;

    private final Map<TaskKind, Duration> times = new EnumMap<>(TaskKind.class);
    private DryingClock dryingClock;
    private BeadSettings bead;
    private Volume usualTube;

    @PostConstruct
    void check() {
        dryingClock = new DryingClock(dryingTime);
        bead = new BeadSettings(
                Length.ofMillimetres(beadWidth),
                Length.ofMillimetres(beadHeight),
                wastePercent,
                Length.ofCentimetres(unmeasured));
        usualTube = Volume.ofMillilitres(tube);
        if (tube <= 0) {
            throw new IllegalArgumentException("lapwing.bead.tube-ml must be more than 0");
        }
        for (TaskKind kind : TaskKind.values()) {
            times.put(kind, time(kind));
        }
    }

    private Duration time(TaskKind kind) {
        String name = "lapwing.time." + kind.word().replace(' ', '-');
        Duration time = config.getOptionalValue(name, Duration.class).orElse(USUAL_TIMES.get(kind));
        if (time.isNegative() || time.isZero()) {
            throw new IllegalArgumentException(name + " must be more than nothing");
        }
        return time;
    }

    DryingClock dryingClock() {
        return dryingClock;
    }

    /** Returns whether the roof must be washed before it is looked at, even if nobody called it dirty. */
    boolean washNeeded(TaskKind kind) {
        return washNeeded && kind == TaskKind.INSPECTION;
    }

    BeadSettings bead() {
        return bead;
    }

    /** Returns the content of a tube that is taken while no sealant of the roof's system is known. */
    Volume usualTube() {
        return usualTube;
    }

    /** Returns how long work of a kind is taken to last while the house has too few jobs of its own. */
    Duration usualTime(TaskKind kind) {
        return times.get(kind);
    }
}
