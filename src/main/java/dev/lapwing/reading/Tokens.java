package dev.lapwing.reading;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.Arrays;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.apache.lucene.analysis.tokenattributes.OffsetAttribute;

/** The words of a note in order, with the break that stands before each. Plain arrays, since this is the hot path. */
final class Tokens {
    /** Breaks before a token, by strength. */
    static final byte NO_BREAK = 0;

    static final byte COMMA = 1;
    static final byte STOP = 2;

    final CleanText text;
    int size;
    int[] start;
    int[] end;
    byte[] breakBefore;
    /** Whether a lexicon lists the token as it is typed. */
    boolean[] listed;
    /** Meaning of token i in language l at {@code words[l][i]}; null when unknown there. */
    final Word[][] words;
    /** Folded form of token i where no lexicon lists it and it is made of letters only; else null. */
    String[] unlisted;

    private Tokens(CleanText text, int languages) {
        this.text = text;
        int capacity = Math.max(8, text.text().length() / 5);
        start = new int[capacity];
        end = new int[capacity];
        breakBefore = new byte[capacity];
        listed = new boolean[capacity];
        words = new Word[languages][capacity];
        unlisted = new String[capacity];
    }

    static Tokens of(CleanText text, Analyzer analyzer, Vocabulary vocabulary) {
        Tokens tokens = new Tokens(text, vocabulary.languages());
        try (TokenStream stream = analyzer.tokenStream("note", new StringReader(text.text()))) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            OffsetAttribute offset = stream.addAttribute(OffsetAttribute.class);
            Spelling spelling = new Spelling(vocabulary);
            stream.reset();
            while (stream.incrementToken()) {
                tokens.add(offset.startOffset(), offset.endOffset());
                int last = tokens.size - 1;
                tokens.listed[last] = spelling.resolve(term.buffer(), term.length(), tokens, last);
            }
            stream.end();
        } catch (IOException e) {
            throw new UncheckedIOException("reading from memory failed", e);
        }
        return tokens;
    }

    private void add(int from, int to) {
        if (size == start.length) {
            grow();
        }
        start[size] = from;
        end[size] = to;
        breakBefore[size] = size == 0 ? STOP : breakIn(end[size - 1], from);
        size++;
    }

    /** Returns whether there is a question mark in the note. */
    boolean asks() {
        return text.text().indexOf('?') >= 0;
    }

    /** Returns whether a question mark follows token i before the next one. */
    boolean asksBehind(int i) {
        int to = i + 1 < size ? start[i + 1] : text.text().length();
        for (int at = end[i]; at < to; at++) {
            if (text.text().charAt(at) == '?') {
                return true;
            }
        }
        return false;
    }

    private void grow() {
        int capacity = size * 2;
        start = Arrays.copyOf(start, capacity);
        end = Arrays.copyOf(end, capacity);
        breakBefore = Arrays.copyOf(breakBefore, capacity);
        listed = Arrays.copyOf(listed, capacity);
        unlisted = Arrays.copyOf(unlisted, capacity);
        for (int l = 0; l < words.length; l++) {
            words[l] = Arrays.copyOf(words[l], capacity);
        }
    }

    /** Finds the strongest break between two words; a dash counts only with a blank before it. */
    private byte breakIn(int from, int to) {
        byte strongest = NO_BREAK;
        String chars = text.text();
        for (int i = from; i < to; i++) {
            byte found =
                    switch (chars.charAt(i)) {
                        case '.' -> inEllipsis(chars, i) ? COMMA : STOP;
                        case '!', '?', ';', '\n', '\r', '\u2022', '\u00bf', '\u00a1', '|' -> STOP;
                        case ',', '\u2026', ':', '(', ')', '[', ']', '\u2013', '\u2014' -> COMMA;
                        case '/' -> i > from && chars.charAt(i - 1) == ' ' ? STOP : NO_BREAK;
                        case '-' -> i > from && chars.charAt(i - 1) == ' ' ? COMMA : NO_BREAK;
                        default -> NO_BREAK;
                    };
            if (found > strongest) {
                strongest = found;
            }
        }
        return strongest;
    }

    /** A row of dots is a pause, not an end. */
    private static boolean inEllipsis(String chars, int i) {
        return i > 0 && chars.charAt(i - 1) == '.' || i + 1 < chars.length() && chars.charAt(i + 1) == '.';
    }

    /** Returns the characters of token i as written, without invisible ones. */
    String written(int i) {
        return text.text().substring(start[i], end[i]);
    }

    /** Returns the word that token i is taken for in any language, the first that knows it, or null. */
    Word anyWord(int i) {
        for (Word[] inLanguage : words) {
            if (inLanguage[i] != null) {
                return inLanguage[i];
            }
        }
        return null;
    }

    int noteStart(int i) {
        return text.originOf(start[i]);
    }

    int noteEnd(int i) {
        return text.originOfEnd(end[i]);
    }
}
