package dev.lapwing.reading;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A lexicon as written by people: sections of words, phrases, patterns and sentences.
 *
 * <p>{@code [overhead]} opens a section of words and phrases with that sign, several to a line, parted by commas;
 * {@code [pattern strike]} opens patterns, one a line; {@code [sentences]} opens texts, {@code name = text};
 * {@code [numbers]} opens number words, {@code word = number}. Text after {@code #} is a remark. The language is the file's name without its ending.
 */
final class LexiconFile {
    record Entry(Sign sign, String text, int line) {}

    record PatternEntry(Sign meaning, String text, int line) {}

    private static final String PATTERN = "pattern ";
    private static final String SENTENCES = "sentences";
    private static final String NUMBERS = "numbers";

    private final Path path;
    private final String language;
    private final List<Entry> entries = new ArrayList<>();
    private final List<PatternEntry> patterns = new ArrayList<>();
    private final Map<String, String> sentences = new HashMap<>();
    private final Map<String, Double> numbers = new LinkedHashMap<>();
    private String section;
    private Sign sign;

    private LexiconFile(Path path) {
        this.path = path;
        String name = String.valueOf(path.getFileName());
        this.language = name.substring(0, name.indexOf('.')).toLowerCase(Locale.ROOT);
    }

    /** Reads a file; throws a {@link LexiconException} with the line and reason when it is not a lexicon. */
    static LexiconFile read(Path path) {
        LexiconFile file = new LexiconFile(path);
        List<String> lines;
        try {
            lines = Files.readAllLines(path);
        } catch (MalformedInputException e) {
            throw file.fault(0, "not UTF-8 text");
        } catch (IOException e) {
            throw file.fault(0, "cannot be read: " + e.getMessage());
        }
        for (int i = 0; i < lines.size(); i++) {
            file.take(lines.get(i), i + 1);
        }
        file.complete();
        return file;
    }

    private void take(String raw, int number) {
        String line = withoutRemark(raw).strip();
        if (line.isEmpty()) {
            return;
        }
        if (line.startsWith("[")) {
            open(line, number);
        } else if (section == null) {
            throw fault(number, "no section before \"" + line + "\"");
        } else if (section.equals(SENTENCES)) {
            takeSentence(line, number);
        } else if (section.equals(NUMBERS)) {
            takeNumber(line, number);
        } else if (section.startsWith(PATTERN)) {
            patterns.add(new PatternEntry(sign, line, number));
        } else {
            takeEntries(line, number);
        }
    }

    private static String withoutRemark(String raw) {
        String line = raw.startsWith("\ufeff") ? raw.substring(1) : raw;
        int remark = line.indexOf('#');
        return remark < 0 ? line : line.substring(0, remark);
    }

    private void open(String line, int number) {
        if (!line.endsWith("]")) {
            throw fault(number, "section without closing bracket: " + line);
        }
        section = line.substring(1, line.length() - 1).strip();
        if (section.equals(SENTENCES) || section.equals(NUMBERS)) {
            return;
        }
        String word = section.startsWith(PATTERN)
                ? section.substring(PATTERN.length()).strip()
                : section;
        sign = Sign.ofWord(word);
        if (sign == null) {
            throw fault(number, "unknown section \"" + section + "\"");
        }
    }

    private void takeEntries(String line, int number) {
        for (String text : line.split(",", -1)) {
            if (text.isBlank() && !line.endsWith(",")) {
                throw fault(number, "nothing between two commas");
            }
            if (text.indexOf('=') >= 0 || text.indexOf('<') >= 0 || text.contains("..")) {
                throw fault(number, "\"" + text.strip() + "\" belongs into a pattern section");
            }
            if (!text.isBlank()) {
                entries.add(new Entry(sign, text.strip(), number));
            }
        }
    }

    private void takeSentence(String line, int number) {
        int equals = line.indexOf('=');
        if (equals < 1 || equals == line.length() - 1) {
            throw fault(number, "a sentence is written: name = text");
        }
        String name = line.substring(0, equals).strip();
        if (Sentence.ofWord(name) == null) {
            throw fault(number, "unknown sentence \"" + name + "\"");
        }
        sentences.put(name, line.substring(equals + 1).strip());
    }

    private void takeNumber(String line, int number) {
        String[] sides = line.split("=");
        if (sides.length != 2 || !sides[1].strip().matches("\\d+(\\.\\d+)?")) {
            throw fault(number, "a number word is written: word = number");
        }
        numbers.put(sides[0].strip(), Double.valueOf(sides[1].strip()));
    }

    private void complete() {
        if (entries.isEmpty()) {
            throw fault(0, "no words in it");
        }
        for (Sentence sentence : Sentence.values()) {
            if (!sentences.containsKey(sentence.word())) {
                throw fault(0, "the sentence \"" + sentence.word() + "\" is missing");
            }
        }
    }

    LexiconException fault(int line, String reason) {
        return new LexiconException(path, line, reason);
    }

    String language() {
        return language;
    }

    List<Entry> entries() {
        return entries;
    }

    List<PatternEntry> patterns() {
        return patterns;
    }

    Map<String, Double> numbers() {
        return numbers;
    }

    String sentence(Sentence sentence) {
        return sentences.get(sentence.word());
    }
}
