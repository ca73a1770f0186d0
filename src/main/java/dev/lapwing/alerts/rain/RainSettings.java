package dev.lapwing.alerts.rain;

import dev.lapwing.alerts.domain.rain.Forecast;
import dev.lapwing.alerts.domain.rain.ForecastFormat;
import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;

/** What an operator sets about the rain clock. */
@ConfigMapping(prefix = "lapwing.rain")
public interface RainSettings {
    /** Address of the feed, a file or a URL; {@code {depot}}, {@code {latitude}}, {@code {longitude}} are filled in. */
    Optional<String> feed();

    @WithDefault("own")
    ForecastFormat format();

    /** Says to the feed who asks, as public feeds demand. */
    @WithDefault("Lapwing (no contact set)")
    String userAgent();

    /** How often a depot's forecast is fetched when the feed does not say until when its answer is fresh. */
    @WithDefault("30m")
    Duration every();

    @WithDefault("10s")
    Duration timeout();

    /** The longest pause after failures, which double the pause each time. */
    @WithDefault("4h")
    Duration longestPause();

    /** A forecast that was made longer ago counts as none. */
    @WithDefault("12h")
    Duration tooOld();

    /** From this chance on rain is likely. */
    @WithDefault("0.5")
    double chance();

    /** From so many millimetres an hour on rain is likely, where the feed tells no chance. */
    @WithDefault("0.2")
    double millimetresAnHour();

    /** Rain within this time quickens the ladder of strikes. */
    @WithDefault("6h")
    Duration near();

    /** What the waits of the ladder are multiplied by when rain is near. */
    @WithDefault("0.5")
    double quicken();

    /** How often it is looked whether a forecast is to be fetched, as the schedule reads it. */
    @WithDefault("1m")
    String look();

    /** Where the depots are, by their code. */
    Map<String, Place> depot();

    /** Where a depot is, in degrees. */
    interface Place {
        Optional<Double> latitude();

        Optional<Double> longitude();
    }

    default Forecast.Likely likely() {
        return new Forecast.Likely(chance(), millimetresAnHour());
    }
}
