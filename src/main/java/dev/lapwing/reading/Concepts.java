package dev.lapwing.reading;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Words of like meaning over all languages, as written by people in {@code concepts.txt}: a heading
 * {@code languages: en | es | fr}, then one meaning a line, {@code branch: branch bough | rama gajo | branche}. A star
 * stands for any ending; text after {@code #} is a remark. A form may have several meanings.
 */
final class Concepts {
    static final int[] NONE = {};

    private static final String HEADING = "languages";
    private static final int SHORTEST_STEM = 3;

    private final Path path;
    private final List<String> names = new ArrayList<>();
    private final Map<String, Integer> numbers = new HashMap<>();
    /** Per language of the reader, forms and stems with the numbers of their meanings. */
    private final List<Map<String, int[]>> forms = new ArrayList<>();

    private final List<Map<String, int[]>> stems = new ArrayList<>();
    /** The reader's language of each column, or -1. */
    private int[] columns;

    private Concepts(Path path) {
        this.path = path;
    }

    /** Reads a file; throws a {@link LexiconException} with the line and reason when it cannot be used. */
    static Concepts read(Path path, List<String> languages) {
        Concepts concepts = new Concepts(path);
        for (int l = 0; l < languages.size(); l++) {
            concepts.forms.add(new HashMap<>());
            concepts.stems.add(new HashMap<>());
        }
        List<String> lines;
        try {
            lines = Files.readAllLines(path);
        } catch (IOException e) {
            throw concepts.fault(0, "cannot be read: " + e);
        }
        for (int i = 0; i < lines.size(); i++) {
            int remark = lines.get(i).indexOf('#');
            String line = remark < 0 ? lines.get(i) : lines.get(i).substring(0, remark);
            if (!line.isBlank()) {
                concepts.take(line, i + 1, languages);
            }
        }
        return concepts;
    }

    private void take(String line, int number, List<String> languages) {
        int colon = line.indexOf(':');
        if (colon < 1) {
            throw fault(number, "a meaning is written: name: words | words | words");
        }
        String name = line.substring(0, colon).strip();
        String[] parts = line.substring(colon + 1).split("\\|", -1);
        if (columns == null) {
            if (!name.equals(HEADING)) {
                throw fault(number, "the first line names the columns: languages: en | es | fr");
            }
            columns = Arrays.stream(parts)
                    .mapToInt(part -> languages.indexOf(part.strip()))
                    .toArray();
            return;
        }
        if (parts.length != columns.length) {
            throw fault(number, parts.length + " columns where there are " + columns.length + " languages");
        }
        if (numbers.putIfAbsent(name, names.size()) != null) {
            throw fault(number, "the meaning \"" + name + "\" stands in an earlier line");
        }
        for (int i = 0; i < parts.length; i++) {
            if (columns[i] >= 0) {
                takeForms(parts[i].strip(), columns[i], number);
            }
        }
        names.add(name);
    }

    private void takeForms(String written, int language, int line) {
        for (String form : written.isEmpty() ? new String[0] : written.split("\\s+")) {
            boolean stem = form.endsWith("*");
            String bare = stem ? form.substring(0, form.length() - 1) : form;
            if (bare.indexOf('*') >= 0 || stem && bare.length() < SHORTEST_STEM) {
                throw fault(line, "a star stands at the end, after three letters or more: \"" + form + "\"");
            }
            (stem ? stems : forms).get(language).merge(bare, new int[] {names.size()}, Concepts::joined);
        }
    }

    private static int[] joined(int[] earlier, int[] last) {
        int[] all = Arrays.copyOf(earlier, earlier.length + 1);
        all[earlier.length] = last[0];
        return all;
    }

    private LexiconException fault(int line, String reason) {
        return new LexiconException(path, line, reason);
    }

    /** Returns the meanings of a folded form in a language: as listed, else by the longest stem it begins with. */
    int[] of(int language, String form) {
        int[] listed = asListed(language, form);
        for (int length = form.length(); listed.length == 0 && length >= SHORTEST_STEM; length--) {
            listed = stems.get(language).getOrDefault(form.substring(0, length), NONE);
        }
        return listed;
    }

    /** Returns the meanings of a form that is listed just so. */
    int[] asListed(int language, String form) {
        return forms.get(language).getOrDefault(form, NONE);
    }

    int languages() {
        return forms.size();
    }

    int count() {
        return names.size();
    }

    String name(int concept) {
        return names.get(concept);
    }

    /** Returns the number of a meaning, or -1. */
    int number(String name) {
        return numbers.getOrDefault(name, -1);
    }
}
