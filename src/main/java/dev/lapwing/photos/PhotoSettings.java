package dev.lapwing.photos;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.time.Duration;

/** What an operator sets about photos. */
@ConfigMapping(prefix = "lapwing.photos")
public interface PhotoSettings {
    @WithDefault("data/photos")
    Path folder();

    /** Most megabytes of one file as sent. */
    @WithDefault("15")
    int fileMegabytes();

    /** Most millions of points of one picture. */
    @WithDefault("50")
    int megapixels();

    /** Points of the longer side of a picture as it is kept; larger ones are made smaller. */
    @WithDefault("3200")
    int longestSide();

    /** How many pictures are decoded at a time; each may take four bytes for each point. */
    @WithDefault("2")
    int decoders();

    /** How long a picture waits for its turn to be decoded. */
    @WithDefault("30s")
    Duration longestWait();

    /** Most megabytes kept of one unit. */
    @WithDefault("300")
    int unitMegabytes();

    /** Most megabytes kept of the whole fleet. */
    @WithDefault("50000")
    int fleetMegabytes();

    /** How long a file without a row may lie before the daily clean-up deletes it. */
    @WithDefault("24h")
    Duration orphanAge();
}
