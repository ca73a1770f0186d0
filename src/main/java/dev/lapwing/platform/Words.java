package dev.lapwing.platform;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Finds constants by their words. */
public final class Words {
    private Words() {}

    /**
     * Returns the constant with this word; case, spaces, hyphens and underscores do not matter.
     *
     * @throws IllegalArgumentException naming the allowed words when none matches
     */
    public static <E extends Enum<E> & Worded> E parse(Class<E> type, String word) {
        String wanted = plain(word);
        return Arrays.stream(type.getEnumConstants())
                .filter(constant -> plain(constant.word()).equals(wanted))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("must be one of " + allowed(type)));
    }

    /** Returns the words of a type, as a list for a message. */
    public static <E extends Enum<E> & Worded> String allowed(Class<E> type) {
        return Arrays.stream(type.getEnumConstants()).map(Worded::word).collect(Collectors.joining(", "));
    }

    private static String plain(String word) {
        return word == null ? "" : word.strip().toLowerCase(Locale.ROOT).replaceAll("[ _-]+", "-");
    }
}
