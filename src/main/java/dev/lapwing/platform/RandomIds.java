package dev.lapwing.platform;

import jakarta.inject.Singleton;
import java.util.UUID;

@Singleton
class RandomIds implements Ids {
    @Override
    public UUID next() {
        return UUID.randomUUID();
    }
}
