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
import java.util.function.IntPredicate;

/**
 * Learns the weights from labelled notes and writes them; prints, by cross-validation, how notes are read whose weights
 * were learned without them. Arguments: the lexicon folder and folders of {@code *.jsonl} files. The same notes and
 * lexicons give the same file.
 */
final class WeightsTraining {
    private static final int LEAST_NOTES = 3;
    private static final double LABELLED_UNCLEAR = 0.3;
    private static final double FILED_AWAY = 0.004;
    private static final int FOLDS = 5;
    /** How much a trait counts that is as frequent in both kinds of note, beside one that is e times as frequent in one. */
    private static final double EVEN = 0.3;

    /** How freely a kind of trait may take weight; found by cross-validation. */
    private static final Map<String, Double> FREEDOM = Map.ofEntries(
            Map.entry("trait", 1.0),
            Map.entry("word", 0.6),
            Map.entry("gram", 0.32),
            Map.entry("said", 0.4),
            Map.entry("idea", 1.2),
            Map.entry("ideas", 0.8),
            Map.entry("idea-with", 0.5),
            Map.entry("twice", 0.5),
            Map.entry("thrice", 0.5),
            Map.entry("first", 0.3),
            Map.entry("last", 0.5),
            Map.entry("sentences", 0.5));

    private final ContactReaders.Study study;
    private final Map<String, Integer> numbers = new HashMap<>();
    private final List<String> names = new ArrayList<>();
    private final List<int[]> traits = new ArrayList<>();
    private final List<LabelledNote> notes = new ArrayList<>();
    private final List<NoteCase> cases = new ArrayList<>();
    private final List<String> sources = new ArrayList<>();

    WeightsTraining(Path folder) {
        study = ContactReaders.withoutWeights(folder);
    }

    public static void main(String[] arguments) throws IOException {
        Path folder = Path.of(arguments[0]);
        WeightsTraining training = new WeightsTraining(folder);
        for (String notes : Arrays.asList(arguments).subList(1, arguments.length)) {
            for (Path file : ReadingEvaluation.notesIn(Path.of(notes))) {
                training.add(LabelledNote.readAll(file), file.toString());
            }
        }
        training.printCrossValidation();
        Files.write(folder.resolve("weights.txt"), training.learn());
    }

    void add(List<LabelledNote> more, String source) {
        for (LabelledNote labelled : more) {
            NoteCase noteCase = study.reader().study(labelled.note(), null, labelled.travelHeight());
            cases.add(noteCase);
            sources.add(source);
            notes.add(labelled);
            traits.add(traits(noteCase));
        }
    }

    private int[] traits(NoteCase noteCase) {
        TreeSet<Integer> found = new TreeSet<>();
        Set<String> forms = new TreeSet<>();
        Traits.of(noteCase, trait -> found.add(number("trait " + Traits.name(trait))));
        NoteTraits.of(
                noteCase,
                study.meanings(),
                key -> found.add(number(study.names().name(key))));
        String language = study.reader().languageOf(noteCase);
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
        return all.stream().mapToInt(Integer::intValue).toArray();
    }

    private int number(String name) {
        return numbers.computeIfAbsent(name, n -> {
            names.add(n);
            return names.size() - 1;
        });
    }

    List<LabelledNote> notes() {
        return notes;
    }

    List<NoteCase> cases() {
        return cases;
    }

    /** Learns from all notes and returns the lines of the file. */
    List<String> learn() {
        double[] weights = weights(i -> true);
        List<String> lines = new ArrayList<>();
        lines.add("# Weights of reading by example. Written by WeightsTraining from the labelled notes; do not edit.");
        lines.add(String.format(Locale.ROOT, "start = %.3f", weights[names.size()]));
        List<String> named = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            if (Math.abs(weights[i]) >= FILED_AWAY) {
                named.add(String.format(Locale.ROOT, "%s = %.3f", names.get(i), weights[i]));
            }
        }
        named.sort(null);
        lines.addAll(named);
        return lines;
    }

    /** Returns the likelihood of each note by weights learned without its fold; folds are dealt out in turn per verdict. */
    double[] crossValidated() {
        int[] dealt = new int[ContactVerdict.values().length];
        int[] folds = notes.stream()
                .mapToInt(note -> dealt[note.verdict().ordinal()]++ % FOLDS)
                .toArray();
        double[] likelihoods = new double[folds.length];
        for (int fold = 0; fold < FOLDS; fold++) {
            int left = fold;
            double[] weights = weights(i -> folds[i] != left);
            for (int i = 0; i < folds.length; i++) {
                likelihoods[i] = folds[i] == fold ? Logistic.likelihood(weights, traits.get(i)) : likelihoods[i];
            }
        }
        return likelihoods;
    }

    private void printCrossValidation() {
        double[] likelihoods = crossValidated();
        Map<String, Tally> tallies = new TreeMap<>();
        for (int i = 0; i < likelihoods.length; i++) {
            Decision decision = Decision.of(cases.get(i), likelihoods[i]);
            String language = notes.get(i).language();
            Reading reading = new Reading(decision.verdict(), language, decision.score(), "", List.of());
            tallies.computeIfAbsent(sources.get(i), source -> new Tally()).add(notes.get(i), reading);
        }
        tallies.forEach((source, tally) -> System.out.println(tally.report(source + ", cross-validated")));
    }

    /** Learns from the notes chosen by their number. */
    double[] weights(IntPredicate chosen) {
        double[][] counts = counts(chosen);
        Logistic logistic = new Logistic(penalties(counts));
        for (int i = 0; i < notes.size(); i++) {
            if (chosen.test(i)) {
                int[] frequent = Arrays.stream(traits.get(i))
                        .filter(trait -> counts[2][trait] >= LEAST_NOTES)
                        .toArray();
                logistic.add(frequent, target(i), importance(i));
            }
        }
        return logistic.learn();
    }

    private double target(int note) {
        return switch (notes.get(note).verdict()) {
            case CONTACT -> 1;
            case UNCLEAR -> 0.5;
            case NONE -> 0;
        };
    }

    private double importance(int note) {
        return notes.get(note).verdict() == ContactVerdict.UNCLEAR ? LABELLED_UNCLEAR : 1;
    }

    /** Counts in how many notes each trait stands: without contact, with contact, and in all. */
    private double[][] counts(IntPredicate chosen) {
        double[][] counts = new double[3][names.size()];
        for (int i = 0; i < notes.size(); i++) {
            if (chosen.test(i)) {
                double target = target(i);
                for (int trait : Arrays.stream(traits.get(i)).distinct().toArray()) {
                    counts[0][trait] += 1 - target;
                    counts[1][trait] += target;
                    counts[2][trait]++;
                }
            }
        }
        return counts;
    }

    /** Traits that are more frequent in one kind of note may take weight more freely (after Wang and Manning 2012). */
    private double[] penalties(double[][] counts) {
        double without = total(0);
        double with = total(1);
        double[] penalties = new double[names.size()];
        for (int i = 0; i < penalties.length; i++) {
            String name = names.get(i);
            double freedom = FREEDOM.get(name.substring(0, name.indexOf(' ')));
            double odds = Math.log((counts[1][i] + 1) / (with + 2) / ((counts[0][i] + 1) / (without + 2)));
            penalties[i] = 1 / (freedom * freedom * (EVEN + Math.abs(odds)));
        }
        return penalties;
    }

    private double total(int target) {
        double total = 0;
        for (int i = 0; i < notes.size(); i++) {
            total += 1 - Math.abs(target(i) - target);
        }
        return total;
    }
}
