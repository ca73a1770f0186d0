package dev.lapwing.reading;

import java.util.Arrays;

/** Weights of traits made of parts, a row of plain numbers for each kind and first part, since many are asked for each note. */
final class KeyWeights {
    private static final float[] NONE = {};

    private final float[][][] rows = new float[Trait.values().length][][];

    void put(int key, double weight) {
        int kind = Trait.of(key).ordinal();
        int first = Trait.part(key, 0);
        int second = Trait.part(key, 1);
        float[][] ofKind = rows[kind] == null ? new float[0][] : rows[kind];
        if (first >= ofKind.length) {
            int known = ofKind.length;
            ofKind = Arrays.copyOf(ofKind, first + 1);
            Arrays.fill(ofKind, known, first + 1, NONE);
        }
        if (second >= ofKind[first].length) {
            ofKind[first] = Arrays.copyOf(ofKind[first], second + 1);
        }
        ofKind[first][second] = (float) weight;
        rows[kind] = ofKind;
    }

    /** Returns the weight of a trait; 0 when it has none. */
    double get(int key) {
        float[][] ofKind = rows[Trait.kind(key)];
        int first = Trait.part(key, 0);
        float[] row = ofKind == null || first >= ofKind.length ? NONE : ofKind[first];
        int second = Trait.part(key, 1);
        return second < row.length ? row[second] : 0;
    }
}
