package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.BitSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Weighing by example: a logistic model over the traits, words and pieces of words of a note, learned from labelled
 * notes and kept as readable lines {@code trait roof said = 0.31}, {@code word en bridge = 0.12},
 * {@code gram #brid = 0.02} and, for traits made of parts, {@code ideas hit branch = 0.2}.
 */
final class Weights {
    private static final String START = "start";
    private static final String TRAIT = "trait ";
    private static final String WORD = "word ";
    private static final String GRAM = "gram ";
    private static final int MOST_SUMS = 20_000;

    private final double[] traits = new double[Traits.SIZE];
    private final double[][] words;
    private final Vocabulary vocabulary;
    private final Meanings meanings;
    private final TraitNames names;
    private final KeyWeights keys = new KeyWeights();
    private final Map<String, Double> grams = new HashMap<>();
    /** Sum of the pieces' weights per listed word. */
    private final double[] listedGrams;
    /** The same for forms that are not listed; bounded, so that odd input cannot fill it. */
    private final Map<String, Double> unlistedGrams = new ConcurrentHashMap<>();

    private double start;

    private Weights(Vocabulary vocabulary, Concepts concepts) {
        this.vocabulary = vocabulary;
        this.meanings = new Meanings(concepts, vocabulary);
        this.names = new TraitNames(concepts);
        this.words = new double[vocabulary.languages()][vocabulary.size()];
        this.listedGrams = new double[vocabulary.size()];
    }

    /** Reads a file of weights; throws a {@link LexiconException} with line and reason when it is not one. */
    static Weights read(Path file, Vocabulary vocabulary, Concepts concepts) {
        Weights weights = new Weights(vocabulary, concepts);
        Map<String, Integer> numbers = new HashMap<>();
        for (int trait = 0; trait < Traits.SIZE; trait++) {
            numbers.put(Traits.name(trait), trait);
        }
        List<String> lines;
        try {
            lines = Files.readAllLines(file);
        } catch (IOException e) {
            throw new LexiconException(file, 0, "cannot be read: " + e);
        }
        for (int i = 0; i < lines.size(); i++) {
            String line = lines.get(i).strip();
            if (!line.isEmpty() && !line.startsWith("#")) {
                weights.take(line, file, i + 1, numbers);
            }
        }
        vocabulary.forEachWord(word -> weights.listedGrams[word.number] = weights.gramSum(word.form));
        return weights;
    }

    private void take(String line, Path file, int number, Map<String, Integer> numbers) {
        int equals = line.lastIndexOf('=');
        if (equals < 0) {
            throw new LexiconException(
                    file, number, "a weight is written: trait name = number, or word xx form = number");
        }
        String name = line.substring(0, equals).strip();
        double weight = number(line.substring(equals + 1).strip(), file, number);
        if (name.equals(START)) {
            start = weight;
        } else if (name.startsWith(TRAIT)) {
            Integer trait = numbers.get(name.substring(TRAIT.length()).strip());
            if (trait == null) {
                throw new LexiconException(file, number, "unknown trait in \"" + line + "\"");
            }
            traits[trait] = weight;
        } else if (name.startsWith(WORD)) {
            takeWord(name.substring(WORD.length()).split(" "), weight, file, number);
        } else if (name.startsWith(GRAM)) {
            grams.put(name.substring(GRAM.length()), weight);
        } else if (TraitNames.isName(name)) {
            takeKey(names.key(name), weight);
        } else {
            throw new LexiconException(file, number, "neither trait nor word nor gram: \"" + line + "\"");
        }
    }

    /** A trait of a meaning that is no longer listed simply has no weight. */
    private void takeKey(int key, double weight) {
        if (key >= 0) {
            keys.put(key, weight);
        }
    }

    private static double number(String text, Path file, int line) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException e) {
            throw new LexiconException(file, line, "not a number: \"" + text + "\"");
        }
    }

    /** A word that an operator has taken out of the lexicon since simply has no weight. */
    private void takeWord(String[] parts, double weight, Path file, int line) {
        if (parts.length != 2) {
            throw new LexiconException(file, line, "a word's weight is written: word xx form = number");
        }
        Word word = vocabulary.listed(parts[1]);
        for (int l = 0; l < words.length && word != null; l++) {
            if (vocabulary.lexicon(l).language().equals(parts[0])) {
                words[l][word.number] = weight;
            }
        }
    }

    /** Returns how likely a note with these traits and words tells of contact, 0 to 1. */
    double likelihood(NoteCase noteCase) {
        BitSet seen = new BitSet(Traits.SIZE);
        Traits.of(noteCase, seen::set);
        double sum = start;
        for (int trait = seen.nextSetBit(0); trait >= 0; trait = seen.nextSetBit(trait + 1)) {
            sum += traits[trait];
        }
        return 1 / (1 + Math.exp(-sum - wordSum(noteCase) - keySum(noteCase)));
    }

    private double keySum(NoteCase noteCase) {
        double[] sum = new double[1];
        NoteTraits.of(noteCase, meanings, key -> sum[0] += keys.get(key));
        return sum[0];
    }

    private double wordSum(NoteCase noteCase) {
        Tokens tokens = noteCase.tokens();
        double[] known = words[noteCase.language()];
        Word[] written = tokens.words[noteCase.language()];
        BitSet counted = new BitSet(known.length);
        Set<String> unlisted = new HashSet<>();
        double sum = 0;
        for (int i = 0; i < tokens.size; i++) {
            Word word = written[i];
            if (word == null) {
                if (tokens.unlisted[i] != null && unlisted.add(tokens.unlisted[i])) {
                    sum += unlistedSum(tokens.unlisted[i]);
                }
            } else if (!counted.get(word.number)) {
                counted.set(word.number);
                sum += known[word.number] + listedGrams[word.number];
            }
        }
        return sum;
    }

    private double unlistedSum(String form) {
        Double known = unlistedGrams.get(form);
        if (known != null) {
            return known;
        }
        double sum = gramSum(form);
        if (unlistedGrams.size() < MOST_SUMS) {
            unlistedGrams.put(form, sum);
        }
        return sum;
    }

    private double gramSum(String form) {
        double[] sum = new double[1];
        Grams.of(form, gram -> sum[0] += grams.getOrDefault(gram, 0.0));
        return sum[0];
    }
}
