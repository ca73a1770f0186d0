package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Learns the weights from labelled notes and writes them; prints, by cross-validation, how notes are read whose weights
 * were learned without them. Arguments: the lexicon folder and folders of {@code *.jsonl} files. The same notes and
 * lexicons give the same file.
 */
final class WeightsTraining {
    private static final int LEAST_NOTES = 3;
    private static final double LABELLED_UNCLEAR = 0.3;
    private static final double FILED_AWAY = 0.001;
    private static final double GRAM_FILED_AWAY = 0.01;
    private static final int FOLDS = 5;

    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<int[]> traits = new ArrayList<>();
    private final List<LabelledNote> notes = new ArrayList<>();
    private final List<NoteCase> cases = new ArrayList<>();
    private final List<String> sources = new ArrayList<>();

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        WeightsTraining training = new WeightsTraining();
        LexiconReader reader = ContactReaders.withoutWeights(folder);
        for (String notes : Arrays.asList(arguments).subList(1, arguments.length)) {
            for (Path file : ReadingEvaluation.notesIn(Path.of(notes))) {
                training.add(reader, LabelledNote.readAll(file), file.toString());
            }
        }
        training.crossValidate();
        Files.write(folder.resolve("weights.txt"), training.learn());
    }

    void add(LexiconReader reader, List<LabelledNote> more, String source) {
        for (LabelledNote labelled : more) {
            NoteCase noteCase = reader.study(labelled.note(), null, labelled.travelHeight());
            TreeSet<Integer> found = new TreeSet<>();
            Set<String> forms = new TreeSet<>();
            Traits.of(noteCase, trait -> found.add(number("trait " + Traits.name(trait))));
            String language = reader.languageOf(noteCase);
            for (int i = 0; i < noteCase.tokens().size; i++) {
                Word word = noteCase.tokens().words[noteCase.language()][i];
                if (word != null) {
                    found.add(number("word " + language + ' ' + word.form));
                }
                String form = Grams.form(noteCase.tokens(), noteCase.language(), i);
                if (form != null) {
                    forms.add(form);
                }
            }
            List<Integer> all = new ArrayList<>(found);
            forms.forEach(form -> Grams.of(form, gram -> all.add(number("gram " + gram))));
            cases.add(noteCase);
            sources.add(source);
            notes.add(labelled);
            traits.add(all.stream().mapToInt(Integer::intValue).toArray());
        }
    }

    private int number(String name) {
        return numbers.computeIfAbsent(name, n -> {
            names.add(n);
            return names.size() - 1;
        });
    }

    /** Learns from all notes and returns the lines of the file. */
    List<String> learn() {
        double[] weights = weights(i -> true);
        List<String> lines = new ArrayList<>();
        lines.add("# Weights of reading by example. Written by WeightsTraining from the labelled notes; do not edit.");
        lines.add(String.format(Locale.ROOT, "start = %.4f", weights[names.size()]));
        List<String> named = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            double least = names.get(i).startsWith("gram ") ? GRAM_FILED_AWAY : FILED_AWAY;
            if (Math.abs(weights[i]) >= least) {
                named.add(String.format(Locale.ROOT, "%s = %.4f", names.get(i), weights[i]));
            }
        }
        named.sort(null);
        lines.addAll(named);
        return lines;
    }

    private double penalty(int trait) {
        String name = trait < names.size() ? names.get(trait) : "";
        if (name.startsWith("gram ")) {
            return 0.1;
        }
        return name.startsWith("word ") ? 0.03 : 0.01;
    }

    /** Prints how notes are read whose fold the weights have not seen; folds are dealt out in turn per verdict. */
    private void crossValidate() {
        int[] dealt = new int[ContactVerdict.values().length];
        int[] folds = notes.stream()
                .mapToInt(note -> dealt[note.verdict().ordinal()]++ % FOLDS)
                .toArray();
        Map<String, Tally> tallies = new TreeMap<>();
        for (int fold = 0; fold < FOLDS; fold++) {
            int left = fold;
            double[] weights = weights(i -> folds[i] != left);
            for (int i = 0; i < folds.length; i++) {
                if (folds[i] == fold) {
                    Decision decision = Decision.of(cases.get(i), Logistic.likelihood(weights, traits.get(i)));
                    String language = notes.get(i).language();
                    Reading reading = new Reading(decision.verdict(), language, decision.score(), "", List.of());
                    tallies.computeIfAbsent(sources.get(i), source -> new Tally())
                            .add(notes.get(i), reading);
                }
            }
        }
        tallies.forEach((source, tally) -> System.out.println(tally.report(source + ", cross-validated")));
    }

    /** Learns from the notes chosen by their number. */
    double[] weights(java.util.function.IntPredicate chosen) {
        int[] notesWith = new int[names.size()];
        traits.forEach(found -> Arrays.stream(found).distinct().forEach(trait -> notesWith[trait]++));
        Logistic logistic = new Logistic(names.size(), this::penalty);
        for (int i = 0; i < notes.size(); i++) {
            if (chosen.test(i)) {
                ContactVerdict verdict = notes.get(i).verdict();
                boolean unclear = verdict == ContactVerdict.UNCLEAR;
                double target = unclear ? 0.5 : verdict == ContactVerdict.CONTACT ? 1 : 0;
                int[] frequent = Arrays.stream(traits.get(i))
                        .filter(trait -> notesWith[trait] >= LEAST_NOTES)
                        .toArray();
                logistic.add(frequent, target, unclear ? LABELLED_UNCLEAR : 1);
            }
        }
        return logistic.learn();
    }
}
