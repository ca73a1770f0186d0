package dev.lapwing.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * A page with a form on it.
 *
 * @param title what the form is for
 * @param about the line below the title, or null
 * @param back path of the page it came from and leads to
 * @param action path it is sent to
 * @param button what the button says
 */
public record Form(String title, String about, String back, String action, String button, List<Input> inputs) {
    /** One choice of a list. */
    public record Choice(String value, String label) {
        /** Returns choices whose words are their labels. */
        public static List<Choice> of(List<String> words) {
            return words.stream().map(word -> new Choice(word, word)).toList();
        }
    }

    /**
     * One field.
     *
     * @param name as wrong fields are named
     * @param type that of an input element, or {@code select} or {@code textarea}
     * @param choices what a select offers, else empty
     * @param hint a line below it, or null
     */
    public record Input(String name, String label, String type, List<Choice> choices, String hint) {
        /** Returns a line of text. */
        public static Input text(String name, String label, String hint) {
            return new Input(name, label, "text", List.of(), hint);
        }

        /** Returns a text of several lines. */
        public static Input area(String name, String label, String hint) {
            return new Input(name, label, "textarea", List.of(), hint);
        }

        /** Returns a date. */
        public static Input date(String name, String label, String hint) {
            return new Input(name, label, "date", List.of(), hint);
        }

        /** Returns a local date and time. */
        public static Input time(String name, String label, String hint) {
            return new Input(name, label, "datetime-local", List.of(), hint);
        }

        /** Returns a choice. */
        public static Input select(String name, String label, List<Choice> choices, String hint) {
            return new Input(name, label, "select", choices, hint);
        }
    }

    public Form {
        inputs = List.copyOf(inputs);
    }

    /** Returns what is wrong as lines that name each field by its label. */
    List<String> lines(FieldMessages wrong) {
        List<String> lines = new ArrayList<>();
        for (Map.Entry<String, String> message : wrong.all().entrySet()) {
            String label = inputs.stream()
                    .filter(input -> input.name().equals(message.getKey()))
                    .map(Input::label)
                    .findFirst()
                    .orElse(message.getKey());
            lines.add(label + ": " + message.getValue());
        }
        return lines;
    }
}
