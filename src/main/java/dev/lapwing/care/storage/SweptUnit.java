package dev.lapwing.care.storage;

import dev.lapwing.care.domain.Roof;
import dev.lapwing.care.domain.Service;
import dev.lapwing.fleet.Storage;
import dev.lapwing.use.domain.Season;
import java.time.LocalDate;
import java.util.UUID;

/** A unit as the sweep reads it; its season is null when it has none of its own. */
public record SweptUnit(UUID id, String number, Roof roof, Service service, Season ownSeason, LocalDate seasonSince) {
    /** Returns its roof as it stands today: where it is stored now, or null for where it stands between rentals. */
    public Roof roofStoredAt(Storage place) {
        return place == null
                ? roof
                : new Roof(
                        roof.surface(),
                        roof.footing(),
                        roof.installedOn(),
                        place != Storage.INSIDE,
                        place == Storage.UNDER_TREES);
    }
}
