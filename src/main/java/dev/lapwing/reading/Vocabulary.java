package dev.lapwing.reading;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArrayMap;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;

/** All word forms of all lexicons, and per language the ways to know a form that is not listed as such. */
final class Vocabulary {
    private static final long SCOPES = Sign.bits(Sign.PLAIN, Sign.CLAUSE, Sign.END, Sign.END_IF, Sign.END_PAST);

    private static final int MOST_GUESSES = 20_000;

    private final Map<String, Word[]> guesses = new ConcurrentHashMap<>();
    private final Analyzer analyzer;
    private final CharArrayMap<Word> forms = new CharArrayMap<>(8192, false);
    private final List<LanguageForms> byLanguage = new ArrayList<>();
    private final List<Lexicon> lexicons = new ArrayList<>();
    /** Per language, what number word each word is; NaN for most. */
    private final List<double[]> numbers = new ArrayList<>();

    Vocabulary(List<LexiconFile> files, Analyzer analyzer) {
        this.analyzer = analyzer;
        for (int l = 0; l < files.size(); l++) {
            byLanguage.add(new LanguageForms(files.get(l).language()));
        }
        for (int l = 0; l < files.size(); l++) {
            lexicons.add(learn(l, files.get(l), files.size()));
        }
        for (int l = 0; l < files.size(); l++) {
            numbers.add(numbers(files.get(l), l));
        }
    }

    private double[] numbers(LexiconFile file, int language) {
        Map<Word, Double> values = new HashMap<>();
        file.numbers()
                .forEach((form, value) ->
                        words(form, language, byLanguage.size()).forEach(word -> values.put(word, value)));
        double[] byWord = new double[forms.size()];
        Arrays.fill(byWord, Double.NaN);
        values.forEach((word, value) -> byWord[word.number] = value);
        return byWord;
    }

    private Lexicon learn(int language, LexiconFile file, int languages) {
        Lexicon lexicon = new Lexicon(file);
        for (LexiconFile.Entry entry : file.entries()) {
            List<Word> words = words(entry.text(), language, languages);
            if (words.isEmpty()) {
                throw file.fault(entry.line(), "no letters in \"" + entry.text() + "\"");
            }
            phrase(words, language).signs |= entry.sign().bit();
            if ((entry.sign().bit() & SCOPES) == 0) {
                words.forEach(word -> byLanguage.get(language).learn(word, words.size() == 1));
            }
        }
        for (LexiconFile.PatternEntry entry : file.patterns()) {
            lexicon.add(PatternParser.parse(entry, file, text -> words(text, language, languages)), language);
        }
        return lexicon;
    }

    private static Phrase phrase(List<Word> words, int language) {
        Word first = words.get(0);
        if (first.phrases[language] == null) {
            first.phrases[language] = new Phrase();
        }
        Phrase node = first.phrases[language];
        for (Word word : words.subList(1, words.size())) {
            node = node.extend(word);
        }
        return node;
    }

    private List<Word> words(String text, int language, int languages) {
        List<Word> words = new ArrayList<>();
        for (String form : analysed(text)) {
            Word word = forms.get(form);
            if (word == null) {
                word = new Word(form, forms.size(), languages);
                forms.put(form, word);
            }
            word.addLanguage(language);
            words.add(word);
        }
        return words;
    }

    private List<String> analysed(String text) {
        List<String> terms = new ArrayList<>();
        try (TokenStream stream = analyzer.tokenStream("entry", new StringReader(text))) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                terms.add(term.toString());
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory failed", e);
        }
        return terms;
    }

    /** Returns how many word forms are listed in all. */
    int size() {
        return forms.size();
    }

    void forEachWord(Consumer<Word> taker) {
        forms.values().forEach(taker);
    }

    int languages() {
        return byLanguage.size();
    }

    /** Returns what number a word stands for in a language, or NaN. */
    double number(int language, Word word) {
        double[] byWord = numbers.get(language);
        return word.number < byWord.length ? byWord[word.number] : Double.NaN;
    }

    Lexicon lexicon(int language) {
        return lexicons.get(language);
    }

    LanguageForms forms(int language) {
        return byLanguage.get(language);
    }

    /** Returns what was guessed before for a form that is not listed, or null. */
    Word[] guessed(String form) {
        return guesses.get(form);
    }

    /** Keeps a guess for the next note; the store is bounded, so that odd input cannot fill it. */
    void keepGuess(String form, Word[] guess) {
        if (guesses.size() < MOST_GUESSES) {
            guesses.put(form, guess);
        }
    }

    Word listed(char[] chars, int length) {
        return forms.get(chars, 0, length);
    }

    Word listed(String form) {
        return forms.get(form);
    }
}
