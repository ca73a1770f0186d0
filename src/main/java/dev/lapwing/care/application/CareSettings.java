package dev.lapwing.care.application;

import dev.lapwing.care.domain.CareRules;
import dev.lapwing.care.domain.DueEngine;
import dev.lapwing.care.domain.RuleFile;
import dev.lapwing.fleet.Surface;
import dev.lapwing.use.domain.PatternThresholds;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Reads the care rules and thresholds once, at start, and refuses to start with bad ones. */
@Singleton
class CareSettings {
    @ConfigProperty(name = "lapwing.care.rules", defaultValue = "shared/care/rules.json")
    Path file;

    @Produces
    @Singleton
    @Startup
    DueEngine engine(CareRules rules) {
        return new DueEngine(rules);
    }

    @Produces
    @Singleton
    CareRules rules() {
        Set<String> surfaces =
                Arrays.stream(Surface.values()).map(Surface::word).collect(Collectors.toSet());
        try {
            return RuleFile.read(Files.readString(file, StandardCharsets.UTF_8), surfaces);
        } catch (IOException e) {
            throw new UncheckedIOException("the care rules " + file + " cannot be read", e);
        }
    }

    @Produces
    @Singleton
    PatternThresholds thresholds(
            @ConfigProperty(name = "lapwing.use.trailing-days", defaultValue = "365") int trailingDays,
            @ConfigProperty(name = "lapwing.use.known-days", defaultValue = "90") int knownDays,
            @ConfigProperty(name = "lapwing.use.seasonal-share-out", defaultValue = "0.60") double seasonalShare,
            @ConfigProperty(name = "lapwing.use.full-time-share-out", defaultValue = "0.70") double fullTimeShare,
            @ConfigProperty(name = "lapwing.use.seasonal-store-days", defaultValue = "90") int seasonalStoreDays,
            @ConfigProperty(name = "lapwing.use.full-time-store-days", defaultValue = "60") int fullTimeStoreDays) {
        return new PatternThresholds(
                trailingDays, knownDays, seasonalShare, fullTimeShare, seasonalStoreDays, fullTimeStoreDays);
    }
}
