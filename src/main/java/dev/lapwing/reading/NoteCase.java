package dev.lapwing.reading;

import java.util.List;

/** All that reading by rules has found out about one note. */
record NoteCase(Tokens tokens, int language, List<Signal> signals, Layout layout, Judgement judgement) {}
