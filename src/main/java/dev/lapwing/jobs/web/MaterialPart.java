package dev.lapwing.jobs.web;

import java.util.List;

/**
 * What work takes.
 *
 * @param tubes how many tubes of what, or null when no sealant is asked for
 * @param metric the arithmetic, one step a line
 * @param us the same in US units
 */
public record MaterialPart(String tubes, List<String> metric, List<String> us, String time) {}
