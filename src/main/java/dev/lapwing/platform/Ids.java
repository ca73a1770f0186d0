package dev.lapwing.platform;

import java.util.UUID;

/** Makes the ids of new things. */
public interface Ids {
    UUID next();
}
