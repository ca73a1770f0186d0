package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Weighing by example: a logistic model over the traits and words of a note, learned from labelled notes and kept as
 * readable lines {@code trait roof said = 0.31} and {@code word en bridge = 0.12}.
 */
final class Weights {
    private static final String START = "start";
    private static final String TRAIT = "trait ";
    private static final String WORD = "word ";

    private final double[] traits = new double[Traits.SIZE];
    private final List<Map<Word, Double>> words;
    private final Vocabulary vocabulary;
    private double start;

    private Weights(Vocabulary vocabulary) {
        this.vocabulary = vocabulary;
        this.words = java.util.stream.IntStream.range(0, vocabulary.languages())
                .<Map<Word, Double>>mapToObj(l -> new HashMap<>())
                .toList();
    }

    /** Reads a file of weights; throws a {@link LexiconException} with line and reason when it is not one. */
    static Weights read(Path file, Vocabulary vocabulary) {
        Weights weights = new Weights(vocabulary);
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
        } else {
            throw new LexiconException(file, number, "neither trait nor word: \"" + line + "\"");
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
        for (int l = 0; l < words.size() && word != null; l++) {
            if (vocabulary.lexicon(l).language().equals(parts[0])) {
                words.get(l).put(word, weight);
            }
        }
    }

    /** Returns how likely a note with these traits and words tells of contact, 0 to 1. */
    double likelihood(NoteCase noteCase) {
        double sum = start;
        boolean[] seen = new boolean[Traits.SIZE];
        Traits.of(noteCase, trait -> seen[trait] = true);
        for (int trait = 0; trait < seen.length; trait++) {
            sum += seen[trait] ? traits[trait] : 0;
        }
        Map<Word, Double> known = words.get(noteCase.language());
        Word[] written = noteCase.tokens().words[noteCase.language()];
        Set<Word> counted = new HashSet<>(Arrays.asList(written).subList(0, noteCase.tokens().size));
        for (Word word : counted) {
            sum += word == null ? 0 : known.getOrDefault(word, 0.0);
        }
        return 1 / (1 + Math.exp(-sum));
    }
}
