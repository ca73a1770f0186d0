package dev.lapwing.alerts.application;

import jakarta.inject.Singleton;
import java.util.concurrent.ThreadLocalRandom;

@Singleton
class RandomChance implements Chance {
    @Override
    public double next() {
        return ThreadLocalRandom.current().nextDouble();
    }
}
