package dev.lapwing.reading;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.Iterator;
import java.util.List;

/**
 * Logistic regression with a quadratic penalty of its own for each trait, by the limited-memory BFGS method (Nocedal and
 * Wright, Numerical Optimization, algorithm 7.4) with halved steps. Deterministic.
 */
final class Logistic {
    private static final int STEPS = 120;
    private static final int MEMORY = 8;
    private static final int HALVINGS = 20;
    private static final double ENOUGH = 1e-4;

    private record Example(int[] present, double target, double importance) {}

    private record Move(double[] step, double[] change, double product) {}

    private final List<Example> examples = new ArrayList<>();
    private final double[] penalties;

    /** Takes one penalty for each trait; the start has none. */
    Logistic(double[] penalties) {
        this.penalties = Arrays.copyOf(penalties, penalties.length + 1);
    }

    void add(int[] present, double target, double importance) {
        examples.add(new Example(present, target, importance));
    }

    /** Returns one weight per trait, and the start at the end. */
    double[] learn() {
        double[] weights = new double[penalties.length];
        double[] slope = new double[weights.length];
        double loss = loss(weights, slope);
        Deque<Move> moves = new ArrayDeque<>();
        for (int step = 0; step < STEPS; step++) {
            double[] direction = direction(slope, moves);
            double descent = dot(direction, slope);
            double length = moves.isEmpty() ? 1 / Math.sqrt(-descent) : 1;
            double[] next = null;
            double[] nextSlope = new double[weights.length];
            double nextLoss = Double.POSITIVE_INFINITY;
            for (int half = 0; half < HALVINGS && nextLoss > loss + ENOUGH * length * descent; half++) {
                length = half == 0 ? length : length / 2;
                next = moved(weights, direction, length);
                nextLoss = loss(next, nextSlope);
            }
            if (loss - nextLoss < ENOUGH * 1e-2 * loss) {
                return nextLoss < loss ? next : weights;
            }
            remember(moves, moved(next, weights, -1), moved(nextSlope, slope, -1));
            weights = next;
            slope = nextSlope;
            loss = nextLoss;
        }
        return weights;
    }

    private static void remember(Deque<Move> moves, double[] step, double[] change) {
        double product = dot(step, change);
        if (product > 0) {
            moves.addLast(new Move(step, change, product));
            if (moves.size() > MEMORY) {
                moves.removeFirst();
            }
        }
    }

    private static double[] direction(double[] slope, Deque<Move> moves) {
        double[] direction = moved(new double[slope.length], slope, -1);
        double[] shares = new double[moves.size()];
        int i = shares.length;
        for (Iterator<Move> latest = moves.descendingIterator(); latest.hasNext(); ) {
            Move move = latest.next();
            shares[--i] = dot(move.step, direction) / move.product;
            add(direction, move.change, -shares[i]);
        }
        if (!moves.isEmpty()) {
            Move last = moves.getLast();
            double scale = last.product / dot(last.change, last.change);
            for (int j = 0; j < direction.length; j++) {
                direction[j] *= scale;
            }
        }
        for (Move move : moves) {
            add(direction, move.step, shares[i++] - dot(move.change, direction) / move.product);
        }
        return direction;
    }

    /** Returns the penalised loss at some weights, and writes its slope. */
    private double loss(double[] weights, double[] slope) {
        double loss = 0;
        for (int i = 0; i < slope.length; i++) {
            slope[i] = penalties[i] * weights[i];
            loss += penalties[i] * weights[i] * weights[i] / 2;
        }
        for (Example example : examples) {
            double likelihood = likelihood(weights, example.present);
            double error = example.importance * (likelihood - example.target);
            loss -= example.importance
                    * (example.target * Math.log(likelihood + 1e-300)
                            + (1 - example.target) * Math.log(1 - likelihood + 1e-300));
            for (int trait : example.present) {
                slope[trait] += error;
            }
            slope[slope.length - 1] += error;
        }
        return loss;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void add(double[] to, double[] more, double times) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * more[i];
        }
    }

    private static double[] moved(double[] from, double[] direction, double length) {
        double[] moved = from.clone();
        add(moved, direction, length);
        return moved;
    }

    static double likelihood(double[] weights, int[] present) {
        double sum = weights[weights.length - 1];
        for (int trait : present) {
            sum += weights[trait];
        }
        return 1 / (1 + Math.exp(-sum));
    }
}
