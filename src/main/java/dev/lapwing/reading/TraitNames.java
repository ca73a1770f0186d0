package dev.lapwing.reading;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The readable names of traits made of parts, as written in the file of weights: {@code ideas hit branch}. */
final class TraitNames {
    private static final Signal.Standing[] STANDINGS = Signal.Standing.values();
    private static final String[] CLAIMS = {"claimed", "unclaimed"};

    private static final Map<String, Trait> BY_WORD = new HashMap<>();

    static {
        for (Trait trait : Trait.values()) {
            BY_WORD.put(word(trait), trait);
        }
    }

    private final Concepts concepts;
    private final Map<String, Integer> sayings = new HashMap<>();

    TraitNames(Concepts concepts) {
        this.concepts = concepts;
        for (int saying = 0; saying < Sign.values().length * STANDINGS.length; saying++) {
            sayings.put(saying(saying), saying);
        }
    }

    private static String word(Trait trait) {
        return trait.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String name(int key) {
        Trait trait = Trait.of(key);
        StringBuilder name = new StringBuilder(word(trait));
        for (int i = 0; i < trait.parts.length; i++) {
            name.append(' ').append(part(trait.parts[i], Trait.part(key, i)));
        }
        return name.toString();
    }

    private String part(Trait.Part part, int number) {
        return switch (part) {
            case SAYING -> saying(number);
            case CONCEPT -> concepts.name(number);
            case CLAIM -> Sign.values()[number / 2].word() + '/' + CLAIMS[number % 2];
            case COUNT -> Integer.toString(number);
        };
    }

    private static String saying(int number) {
        String standing = STANDINGS[number % STANDINGS.length].name();
        return Sign.values()[number / STANDINGS.length].word() + '/' + standing.toLowerCase(Locale.ROOT);
    }

    /** Tells whether a name is that of a kind of trait made of parts. */
    static boolean isName(String name) {
        return BY_WORD.containsKey(name.substring(0, Math.max(0, name.indexOf(' '))));
    }

    /** Returns the number of a trait; -1 when it names a sign or a meaning that is not listed. */
    int key(String name) {
        String[] pieces = name.split(" ");
        Trait trait = BY_WORD.get(pieces[0]);
        int[] numbers = new int[2];
        for (int i = 0; i < trait.parts.length; i++) {
            numbers[i] = i + 1 < pieces.length ? number(trait.parts[i], pieces[i + 1]) : -1;
            if (numbers[i] < 0) {
                return -1;
            }
        }
        return trait.key(numbers[0], numbers[1]);
    }

    private int number(Trait.Part part, String piece) {
        return switch (part) {
            case SAYING -> sayings.getOrDefault(piece, -1);
            case CONCEPT -> concepts.number(piece);
            case CLAIM -> claim(piece);
            case COUNT -> piece.chars().allMatch(Character::isDigit) ? Integer.parseInt(piece) : -1;
        };
    }

    private static int claim(String piece) {
        int slash = piece.indexOf('/');
        Sign sign = slash < 0 ? null : Sign.ofWord(piece.substring(0, slash));
        if (sign == null) {
            return -1;
        }
        return sign.ordinal() * 2 + (piece.endsWith("/" + CLAIMS[0]) ? 0 : 1);
    }
}
