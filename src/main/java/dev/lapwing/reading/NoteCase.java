package dev.lapwing.reading;

import java.util.List;

/** All that reading by rules has found out about one note. */
record NoteCase(Tokens tokens, int language, List<Signal> signals, Layout layout, Judgement judgement) {
    private static final long TELLING = Things.DECIDING | Things.EVENTS;

    /** Returns the first telling signals that the note claims, at most so many; those it takes back if it claims none. */
    List<Signal> tellingSignals(int most) {
        boolean claims = signals.stream().anyMatch(signal -> signal.isAny(TELLING) && signal.stands());
        return signals.stream()
                .filter(signal -> signal.isAny(TELLING) && (signal.stands() || !claims))
                .limit(most)
                .toList();
    }

    boolean hasTellingWord() {
        return signals.stream().anyMatch(signal -> signal.isAny(TELLING));
    }
}
