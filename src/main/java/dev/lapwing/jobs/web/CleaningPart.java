package dev.lapwing.jobs.web;

import dev.lapwing.jobs.application.RoofLists;
import java.util.List;
import java.util.UUID;

/**
 * What may touch a roof, and its wash.
 *
 * @param open whether the person who looks at it can note something
 * @param washed when the last wash was finished, or null
 */
public record CleaningPart(UUID id, boolean open, List<RoofLists.Item> cleaners, String washed, boolean tooDirty) {}
