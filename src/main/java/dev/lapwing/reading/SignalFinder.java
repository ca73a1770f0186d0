package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the words, phrases and patterns of one language in a stretch of a note, in order of their start. */
final class SignalFinder {
    private static final long NEVER_PASSED_OVER = Sign.bits(Sign.NOT, Sign.NOT_AFTER, Sign.NEAR_MISS, Sign.END);
    /** A phrase of these alone does not use up its words: in "and the roof" the roof still counts. */
    private static final long CONNECTIVES = Sign.bits(Sign.PLAIN, Sign.CLAUSE, Sign.END, Sign.END_IF, Sign.END_PAST);

    private static final int LEAST_BORROWED = 4;

    private final Tokens tokens;
    private final int language;
    private final Lexicon lexicon;
    private final Signal[] at;
    private final List<Signal> found = new ArrayList<>();

    SignalFinder(Tokens tokens, int language, Lexicon lexicon) {
        this.tokens = tokens;
        this.language = language;
        this.lexicon = lexicon;
        this.at = new Signal[tokens.size];
    }

    List<Signal> find(int from, int to) {
        for (int i = from; i < to; ) {
            i = takePhrase(i, to);
        }
        takeBelongings(to);
        List<Signal> wholes = new ArrayList<>();
        for (int i = from; i < to; i++) {
            takePatterns(i, to, wholes);
        }
        for (Signal whole : wholes) {
            if (whole.is(Sign.FIGURE) || whole.isAny(Scopes.TRIGGERS)) {
                found.removeIf(part -> part.from >= whole.from && part.to <= whole.to && !part.isAny(Things.ALL));
            }
            if (!whole.is(Sign.FIGURE)) {
                found.add(whole);
            }
        }
        found.sort(Comparator.comparingInt(signal -> signal.from));
        return found;
    }

    /** Takes the longest phrase that starts at a token; returns the token to go on with. */
    private int takePhrase(int start, int limit) {
        int language = languageAt(start);
        Word word = tokens.words[language][start];
        Phrase node = word == null ? null : word.phrases[language];
        long signs = 0;
        int end = start + 1;
        for (int i = start; node != null; ) {
            i++;
            if (node.signs != 0) {
                signs = node.signs;
                end = i;
            }
            node = i < limit && tokens.breakBefore[i] != Tokens.STOP ? node.next(tokens.words[language][i]) : null;
        }
        if (signs != 0) {
            Signal signal = new Signal(signs, start, end);
            at[start] = signal;
            if ((signs & ~Sign.bits(Sign.PLAIN, Sign.FIGURE)) != 0) {
                found.add(signal);
            }
        }
        return (signs & ~CONNECTIVES) == 0 ? start + 1 : end;
    }

    /** A word that this language does not know is read in another one that lists it as it is written. */
    private int languageAt(int i) {
        if (tokens.words[language][i] != null) {
            return language;
        }
        for (int other = 0; tokens.listed[i] && other < tokens.words.length; other++) {
            Word word = tokens.words[other][i];
            if (word != null && word.form.length() >= LEAST_BORROWED) {
                return other;
            }
        }
        return language;
    }

    /** Adds "my hat" and the like: an owner and a word that means nothing to this lexicon. */
    private void takeBelongings(int limit) {
        for (Signal owner : List.copyOf(found)) {
            int next = owner.to;
            if (owner.is(Sign.OWNER)
                    && next < limit
                    && tokens.breakBefore[next] == Tokens.NO_BREAK
                    && (at[next] == null || at[next].signs == Sign.PLAIN.bit())) {
                found.add(new Signal(Sign.BELONGING.bit(), owner.from, next + 1));
            }
        }
    }

    private void takePatterns(int start, int limit, List<Signal> wholes) {
        Word word = tokens.words[language][start];
        if (word != null && word.phrases[language] != null) {
            take(word.phrases[language].patterns, start, limit, wholes);
        }
        Signal signal = at[start];
        if (signal != null) {
            for (long bits = signal.signs; bits != 0; bits &= bits - 1) {
                take(lexicon.beginningWith(Long.numberOfTrailingZeros(bits)), start, limit, wholes);
            }
        }
    }

    private void take(List<Pattern> patterns, int start, int limit, List<Signal> wholes) {
        for (Pattern pattern : patterns) {
            int end = match(pattern, start, limit);
            if (end > 0) {
                wholes.add(new Signal(pattern.meaning().bit(), start, end));
            }
        }
    }

    private int match(Pattern pattern, int start, int limit) {
        int position = start;
        for (Pattern.Part part : pattern.parts()) {
            int slack = position == start ? 0 : part.farBefore() ? Pattern.GAP : Pattern.SLACK;
            position = advance(part, position, slack, limit, position == start);
            if (position < 0) {
                return -1;
            }
        }
        return position;
    }

    /** Returns the token behind the part when it fits at or shortly after a position, else -1. */
    private int advance(Pattern.Part part, int position, int slack, int limit, boolean first) {
        for (int i = position; i < limit && i <= position + slack; i++) {
            if (!first && tokens.breakBefore[i] == Tokens.STOP) {
                return -1;
            }
            long signs = at[i] == null ? 0 : at[i].signs;
            if (part.fits(tokens.words[language][i], signs)) {
                return (part.signs() & signs) != 0 ? at[i].to : i + 1;
            }
            if ((signs & NEVER_PASSED_OVER) != 0) {
                return -1;
            }
        }
        return -1;
    }
}
