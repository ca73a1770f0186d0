package dev.lapwing.jobs.web;

import dev.lapwing.jobs.application.RoofLists;
import java.util.List;
import java.util.UUID;

/**
 * What sealant may go on a roof.
 *
 * @param open whether the person who looks at it can note something
 * @param comesFirst what must come before any sealant work
 * @param used the sealant that was noted, or null
 */
public record SealantPart(UUID id, boolean open, List<String> comesFirst, List<RoofLists.Item> sealants, String used) {}
