package dev.lapwing.photos.web;

import dev.lapwing.photos.storage.Photo;

/**
 * Where the picture of a photo is found.
 *
 * @param picture path of the whole picture
 * @param thumbnail path of the small one
 */
public record PhotoAddresses(String picture, String thumbnail) {
    /** Returns the addresses for whoever is signed in. */
    public static PhotoAddresses of(Photo photo) {
        String address = "/api/photos/" + photo.id;
        return new PhotoAddresses(address, address + "/thumbnail");
    }

    /** Returns the addresses that belong to the sheet of the task, so that whoever may open the sheet sees them. */
    public static PhotoAddresses onSheet(Photo photo) {
        String address = "/tasks/" + photo.sourceId + "/sheet/photo?id=" + photo.id;
        return new PhotoAddresses(address, address + "&small=yes");
    }
}
