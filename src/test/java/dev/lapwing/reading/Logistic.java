package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Logistic regression with a quadratic penalty, by Adam's gradient steps over all examples. Deterministic. */
final class Logistic {
    private static final int STEPS = 400;
    private static final double STEP = 0.03;
    private static final double PENALTY_SCALE = 0.1;

    private record Example(int[] present, double target, double importance) {}

    private final List<Example> examples = new ArrayList<>();
    private final int size;
    private final IntToDoubleFunction penalty;

    Logistic(int size, IntToDoubleFunction penalty) {
        this.size = size;
        this.penalty = penalty;
    }

    void add(int[] present, double target, double importance) {
        examples.add(new Example(present, target, importance));
    }

    /** Returns one weight per trait, and the start at the end. */
    double[] learn() {
        double[] weights = new double[size + 1];
        double[] mean = new double[size + 1];
        double[] square = new double[size + 1];
        for (int step = 1; step <= STEPS; step++) {
            double[] slope = slope(weights);
            double meanScale = 1 - Math.pow(0.9, step);
            double squareScale = 1 - Math.pow(0.999, step);
            for (int i = 0; i <= size; i++) {
                mean[i] = 0.9 * mean[i] + 0.1 * slope[i];
                square[i] = 0.999 * square[i] + 0.001 * slope[i] * slope[i];
                weights[i] -= STEP * (mean[i] / meanScale) / (Math.sqrt(square[i] / squareScale) + 1e-9);
            }
        }
        return weights;
    }

    private double[] slope(double[] weights) {
        double[] slope = new double[size + 1];
        for (Example example : examples) {
            double error = example.importance * (likelihood(weights, example.present) - example.target);
            for (int trait : example.present) {
                slope[trait] += error / examples.size();
            }
            slope[size] += error / examples.size();
        }
        for (int i = 0; i < size; i++) {
            slope[i] += PENALTY_SCALE * penalty.applyAsDouble(i) * weights[i];
        }
        return slope;
    }

    static double likelihood(double[] weights, int[] present) {
        double sum = weights[weights.length - 1];
        for (int trait : present) {
            sum += weights[trait];
        }
        return 1 / (1 + Math.exp(-sum));
    }
}
