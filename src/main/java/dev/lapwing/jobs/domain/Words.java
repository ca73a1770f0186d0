package dev.lapwing.jobs.domain;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Turns enum values into the words of the HTTP contract and back. */
public final class Words {
    private Words() {}

    /** Returns the contract's word, such as {@code soft-spot} for {@code SOFT_SPOT}. */
    public static String of(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Finds the value of a word; case, spaces and underscores are forgiven, null and unknown words are empty. */
    public static <E extends Enum<E>> Optional<E> read(Class<E> type, String word) {
        if (word == null) {
            return Optional.empty();
        }
        String wanted = key(word);
        return Arrays.stream(type.getEnumConstants())
                .filter(value -> of(value).equals(wanted))
                .findFirst();
    }

    /** Brings a typed word to the form used as key: lower case, hyphens between the parts. */
    public static String key(String word) {
        return word.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
    }

    /** Lists all words of a type for a message, such as "surface, deep". */
    public static <E extends Enum<E>> String list(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Words::of).collect(Collectors.joining(", "));
    }
}
