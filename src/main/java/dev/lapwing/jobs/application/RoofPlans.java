package dev.lapwing.jobs.application;

import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.domain.roof.DefaultPlans;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.PlanVersion;
import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.inject.Singleton;
import jakarta.transaction.Transactional;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Knows the roof plan of every unit: its own, or that of its kind. The length is always that of the register. */
@Startup
@Singleton
public class RoofPlans {
    @ConfigProperty(name = "lapwing.jobs.folder", defaultValue = "shared/jobs")
    Path folder;

    private DefaultPlans defaults;

    /**
     * The plan of a unit.
     *
     * @param version 0 while it is that of its kind
     * @param savedAt when it was saved, null with version 0
     * @param savedBy sign-in name of who saved it, null with version 0
     */
    public record Current(RoofPlan plan, int version, Instant savedAt, String savedBy) {}

    @PostConstruct
    void load() {
        Path file = folder.resolve("roof-plans.csv");
        try {
            defaults = new DefaultPlans(Files.readString(file, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException("the reference data " + file + " cannot be read", e);
        }
    }

    /** Returns the plan that counts. */
    @Transactional
    public Current of(Unit unit) {
        return PlanVersion.latest(unit.id).map(own -> current(unit, own)).orElseGet(() -> ofKind(unit));
    }

    /** Returns an earlier plan; version 0 is that of the unit's kind. */
    @Transactional
    public Optional<Current> of(Unit unit, int version) {
        return version == 0
                ? Optional.of(ofKind(unit))
                : PlanVersion.of(unit.id, version).map(own -> current(unit, own));
    }

    private Current ofKind(Unit unit) {
        return new Current(defaults.forUnit(unit.kind.word(), unit.lengthMetres.doubleValue()), 0, null, null);
    }

    private static Current current(Unit unit, PlanVersion own) {
        RoofPlan plan = RoofPlan.fitting(unit.lengthMetres.doubleValue(), own.widthMetres, own.placed());
        return new Current(plan, own.version, own.savedAt, own.savedBy);
    }
}
