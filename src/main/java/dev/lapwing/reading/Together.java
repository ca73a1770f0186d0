package dev.lapwing.reading;

import java.util.Arrays;
import java.util.function.IntConsumer;

/** Which meanings stand in a note, with which signs in their clauses, and before which other meanings. */
final class Together {
    /** Signs that the note claims, and signs that the words around take back. */
    private static final int CLAIMS = 2;

    private static final byte ABSENT = -1;

    /** The place of each meaning among those present; at most 127 are told apart, the others pass for absent. */
    private final byte[] places;

    private final int[] present;
    private final int wide;
    private final long[] signs;
    private final long[] after;
    private int size;

    Together(int[][] ideas, int count) {
        places = new byte[count];
        Arrays.fill(places, ABSENT);
        int[] found = new int[Math.min(count, Byte.MAX_VALUE)];
        for (int[] ofToken : ideas) {
            for (int idea : ofToken) {
                if (places[idea] == ABSENT && size < found.length) {
                    places[idea] = (byte) size;
                    found[size++] = idea;
                }
            }
        }
        present = found;
        wide = (count + Long.SIZE - 1) / Long.SIZE;
        signs = new long[size * CLAIMS];
        after = new long[size * wide];
    }

    void with(int idea, long[] clause) {
        int place = places[idea];
        if (place != ABSENT) {
            signs[place * CLAIMS] |= clause[0];
            signs[place * CLAIMS + 1] |= clause[1];
        }
    }

    void before(int idea, int other) {
        int place = places[idea];
        if (place != ABSENT) {
            after[place * wide + other / Long.SIZE] |= 1L << other;
        }
    }

    /** Hands over each meaning, each pair of them, and each with each sign of its clauses, once. */
    void handOver(IntConsumer taker) {
        for (int place = 0; place < size; place++) {
            int idea = present[place];
            taker.accept(Trait.IDEA.key(idea));
            for (int claim = 0; claim < CLAIMS; claim++) {
                for (long bits = signs[place * CLAIMS + claim]; bits != 0; bits &= bits - 1) {
                    taker.accept(Trait.IDEA_WITH.key(idea, Long.numberOfTrailingZeros(bits) * CLAIMS + claim));
                }
            }
            for (int i = 0; i < wide; i++) {
                for (long bits = after[place * wide + i]; bits != 0; bits &= bits - 1) {
                    taker.accept(Trait.IDEAS.key(idea, i * Long.SIZE + Long.numberOfTrailingZeros(bits)));
                }
            }
        }
    }
}
