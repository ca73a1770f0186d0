package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.apache.lucene.analysis.Analyzer;

/**
 * Reads notes by lexicons: words, then signals, then the scope of denials and conditions, then each event with the
 * things near it, then one decision. Work and memory grow in proportion to the note.
 */
final class LexiconReader implements ContactReader {
    private final Vocabulary vocabulary;
    private final Analyzer analyzer;
    private final Weights weights;

    LexiconReader(Vocabulary vocabulary, Analyzer analyzer, Weights weights) {
        this.vocabulary = vocabulary;
        this.analyzer = analyzer;
        this.weights = weights;
    }

    @Override
    public Reading read(String note, String language, Double travelHeightMetres) {
        String text = note == null ? "" : note;
        NoteCase noteCase = study(text, language, travelHeightMetres);
        Decision decision = Decision.of(noteCase, weights.likelihood(noteCase));
        return new Answer(text, noteCase, vocabulary.lexicon(noteCase.language())).of(decision);
    }

    NoteCase study(String text, String language, Double travelHeightMetres) {
        Tokens tokens = Tokens.of(CleanText.of(text), analyzer, vocabulary);
        int main = language(language, tokens);
        List<Signal> signals = signals(tokens, main);
        Layout layout = new Layout(tokens, signals);
        new Scopes(tokens, signals, layout).mark();
        Judgement judgement = new Judgement();
        judgement.weigh(signals, layout);
        List<Height> heights = heights(tokens, main);
        new HeightJudge(heights, signals, layout).judge(travelHeightMetres, judgement);
        return new NoteCase(tokens, main, signals, layout, judgement);
    }

    List<Height> heights(Tokens tokens, int language) {
        return Height.allIn(tokens, new SpokenHeight(tokens, language, vocabulary));
    }

    String languageOf(NoteCase noteCase) {
        return vocabulary.lexicon(noteCase.language()).language();
    }

    private int language(String given, Tokens tokens) {
        if (given != null) {
            String wanted = given.strip().toLowerCase(Locale.ROOT);
            for (int l = 0; l < vocabulary.languages(); l++) {
                if (vocabulary.lexicon(l).language().equals(wanted)) {
                    return l;
                }
            }
        }
        return LanguageGuess.best(LanguageGuess.counts(tokens, 0, tokens.size));
    }

    /** Finds the signals of the main language, or of another one in sentences that it fits better. */
    private List<Signal> signals(Tokens tokens, int main) {
        List<Signal> signals = new ArrayList<>();
        int from = 0;
        int reading = main;
        for (int start = 0; start < tokens.size; ) {
            int end = sentenceEnd(tokens, start);
            int[] counts = LanguageGuess.counts(tokens, start, end);
            int best = LanguageGuess.best(counts);
            int sentenceLanguage = counts[best] > counts[main] + 2 ? best : main;
            if (sentenceLanguage != reading) {
                find(tokens, reading, from, start, signals);
                from = start;
                reading = sentenceLanguage;
            }
            start = end;
        }
        find(tokens, reading, from, tokens.size, signals);
        signals.sort(Comparator.comparingInt(signal -> signal.from));
        return signals;
    }

    private void find(Tokens tokens, int language, int from, int to, List<Signal> signals) {
        if (from < to) {
            signals.addAll(new SignalFinder(tokens, language, vocabulary.lexicon(language)).find(from, to));
        }
    }

    private static int sentenceEnd(Tokens tokens, int start) {
        int end = start + 1;
        while (end < tokens.size && tokens.breakBefore[end] != Tokens.STOP) {
            end++;
        }
        return end;
    }
}
