package dev.lapwing.photos.domain;

/** The kinds of picture that are taken, each known by its first bytes and never by its name. */
public enum PictureFormat {
    /** ISO/IEC 10918-1: begins FF D8 FF. */
    JPEG,
    /** ISO/IEC 15948, section 5.2: begins 89 "PNG" 0D 0A 1A 0A. */
    PNG,
    /** RFC 9649, section 2: "RIFF", a length, "WEBP". */
    WEBP
}
