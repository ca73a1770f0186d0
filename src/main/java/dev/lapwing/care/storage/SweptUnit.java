package dev.lapwing.care.storage;

import dev.lapwing.care.domain.Roof;
import dev.lapwing.care.domain.Service;
import dev.lapwing.use.domain.Season;
import java.util.UUID;

/** A unit as the sweep reads it; its season is null when it has none of its own. */
public record SweptUnit(UUID id, String number, Roof roof, Service service, Season ownSeason) {}
