package dev.lapwing.reading;

/**
 * Kinds of trait that are made of one or two parts, written {@code kind part part} in the file of weights. A trait of a
 * note is one number: the kind and the numbers of its parts, twelve bits each.
 */
enum Trait {
    /** A sign and what the words around make of it. */
    SAID(Part.SAYING),
    /** A meaning, two meanings near each other in that order, a meaning with a sign in its clause. */
    IDEA(Part.CONCEPT),
    IDEAS(Part.CONCEPT, Part.CONCEPT),
    IDEA_WITH(Part.CONCEPT, Part.CLAIM),
    /** A sign that comes twice, three times, in the first or in the last sentence. */
    TWICE(Part.CLAIM),
    THRICE(Part.CLAIM),
    FIRST(Part.CLAIM),
    LAST(Part.CLAIM),
    /** How many sentences there are. */
    SENTENCES(Part.COUNT);

    /** What a part of a trait is the number of. */
    enum Part {
        SAYING,
        CONCEPT,
        CLAIM,
        COUNT
    }

    private static final int BITS = 12;
    private static final int MASK = (1 << BITS) - 1;

    final Part[] parts;

    Trait(Part... parts) {
        this.parts = parts;
    }

    int key(int first) {
        return key(first, 0);
    }

    int key(int first, int second) {
        return ordinal() << 2 * BITS | first << BITS | second;
    }

    static Trait of(int key) {
        return values()[kind(key)];
    }

    /** Returns the ordinal of a trait's kind. */
    static int kind(int key) {
        return key >>> 2 * BITS;
    }

    /** Returns the number of the first (0) or second (1) part of a trait. */
    static int part(int key, int i) {
        return (i == 0 ? key >>> BITS : key) & MASK;
    }
}
