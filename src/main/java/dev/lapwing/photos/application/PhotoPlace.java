package dev.lapwing.photos.application;

/**
 * What a photo shows.
 *
 * @param zone where on the roof, or null
 * @param finding place of a finding on its sheet, from 0, or null
 */
public record PhotoPlace(String zone, Integer finding) {
    public static final PhotoPlace NOT_SAID = new PhotoPlace(null, null);
}
