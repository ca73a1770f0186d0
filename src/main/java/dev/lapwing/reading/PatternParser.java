package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** Reads patterns: words, {@code this/that}, {@code <sign|sign>} and {@code ..} for a few words between. */
final class PatternParser {
    private PatternParser() {}

    static Pattern parse(LexiconFile.PatternEntry entry, LexiconFile file, Function<String, List<Word>> words) {
        List<Pattern.Part> parts = new ArrayList<>();
        boolean far = false;
        for (String piece : entry.text().split("\\s+")) {
            if (piece.equals("..")) {
                far = true;
                continue;
            }
            if (piece.startsWith("<")) {
                parts.add(new Pattern.Part(List.of(), signs(piece, entry, file), far));
            } else {
                List<Word> alternatives = words.apply(piece.replace('/', ' '));
                if (alternatives.isEmpty()) {
                    throw file.fault(entry.line(), "no letters in \"" + piece + "\"");
                }
                parts.add(new Pattern.Part(alternatives, 0, far));
            }
            far = false;
        }
        if (parts.size() < 2 || far || parts.get(0).farBefore()) {
            throw file.fault(entry.line(), "a pattern has two parts or more, and no gap at its ends");
        }
        return new Pattern(entry.meaning(), List.copyOf(parts));
    }

    private static long signs(String piece, LexiconFile.PatternEntry entry, LexiconFile file) {
        if (!piece.endsWith(">")) {
            throw file.fault(entry.line(), "sign without closing bracket: " + piece);
        }
        long bits = 0;
        for (String name : piece.substring(1, piece.length() - 1).split("\\|")) {
            Sign sign = Sign.ofWord(name);
            if (sign == null) {
                throw file.fault(entry.line(), "unknown sign \"" + name + "\"");
            }
            bits |= sign.bit();
        }
        return bits;
    }
}
