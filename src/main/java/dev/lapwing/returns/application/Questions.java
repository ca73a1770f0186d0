package dev.lapwing.returns.application;

import dev.lapwing.reading.Reading;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;

/** Words the one question that the desk is asked about an unclear note. */
@ApplicationScoped
class Questions {
    private static final Map<String, String> BY_LANGUAGE = Map.of(
            "en", "Did anything touch the roof, or anything mounted on it, on this trip? Please ask the customer.",
            "es", "¿Algo tocó el techo, o algo montado en él, durante este viaje? Pregunte al cliente.",
            "fr",
                    "Quelque chose a-t-il touché le toit, ou ce qui y est monté, pendant ce voyage ? Demandez au client.");

    String about(Reading reading) {
        return BY_LANGUAGE.getOrDefault(reading.language(), BY_LANGUAGE.get("en"));
    }
}
