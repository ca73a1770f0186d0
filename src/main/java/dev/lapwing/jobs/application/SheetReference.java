package dev.lapwing.jobs.application;

import dev.lapwing.jobs.domain.roof.DefaultPlans;
import dev.lapwing.jobs.domain.sheet.Cautions;
import dev.lapwing.jobs.domain.sheet.WashSteps;
import dev.lapwing.jobs.domain.surface.Cleaner;
import dev.lapwing.jobs.domain.surface.CleanerRules;
import io.quarkus.runtime.Startup;
import jakarta.annotation.PostConstruct;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** What every sheet shows, read once at start so that a bad file is refused before anyone climbs by it. */
@Startup
@Singleton
public class SheetReference {
    @ConfigProperty(name = "lapwing.jobs.folder", defaultValue = "shared/jobs")
    Path jobs;

    @ConfigProperty(name = "lapwing.surfaces.folder", defaultValue = "shared/surfaces")
    Path surfaces;

    @ConfigProperty(name = "lapwing.surfaces.cleaners", defaultValue = "shared/surfaces/demo-cleaners.csv")
    Path cleanerList;

    private Cautions cautions;
    private WashSteps washSteps;
    private WashSteps lookSteps;
    private DefaultPlans roofPlans;
    private CleanerRules cleanerRules;
    private List<Cleaner> cleaners;

    @PostConstruct
    void load() {
        cautions = Cautions.read(read(jobs.resolve("cautions.csv")));
        washSteps = WashSteps.read(read(jobs.resolve("wash-steps.csv")));
        lookSteps = WashSteps.read(read(jobs.resolve("look-steps.csv")));
        roofPlans = new DefaultPlans(read(jobs.resolve("roof-plans.csv")));
        cleanerRules = new CleanerRules(
                read(surfaces.resolve("surfaces.csv")),
                read(surfaces.resolve("cleaner-classes.csv")),
                read(surfaces.resolve("what-may-touch.csv")));
        cleaners = Cleaner.readList(cleanerList.getFileName().toString(), read(cleanerList), cleanerRules);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the reference data " + file + " cannot be read", e);
        }
    }

    public Cautions cautions() {
        return cautions;
    }

    public WashSteps washSteps() {
        return washSteps;
    }

    /** Returns what is looked at and felt, in order. */
    public WashSteps lookSteps() {
        return lookSteps;
    }

    /** Returns the plans that units begin with. */
    DefaultPlans roofPlans() {
        return roofPlans;
    }

    public CleanerRules cleanerRules() {
        return cleanerRules;
    }

    /** Returns the cleaners that the house has. */
    public List<Cleaner> cleaners() {
        return cleaners;
    }
}
