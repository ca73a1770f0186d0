package dev.lapwing.care.application;

import dev.lapwing.use.domain.PatternThresholds;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Reads the thresholds of use once, and refuses bad ones. */
@Singleton
class CareSettings {
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
