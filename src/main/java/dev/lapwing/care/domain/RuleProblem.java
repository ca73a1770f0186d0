package dev.lapwing.care.domain;

/**
 * One thing that is wrong with a file of rules.
 *
 * @param place the rule it is in, as {@code rules[2] (strike)} or by its id; null for the file as a whole
 * @param field the field it is in, or null for the rule as a whole
 * @param line line of the file, from 1; 0 when it is in no line, such as a rule that is missing
 */
public record RuleProblem(String place, String field, String message, int line) {
    static RuleProblem ofFile(String message) {
        return new RuleProblem(null, null, message, 0);
    }

    RuleProblem onLine(int number) {
        return new RuleProblem(place, field, message, number);
    }

    /** Returns place, field and message in one line. */
    public String text() {
        if (place == null) {
            return message;
        }
        return field == null ? place + ": " + message : where() + " " + message;
    }

    /** Returns place and field, or {@code file} when it is in none. */
    public String where() {
        if (place == null) {
            return "file";
        }
        return field == null ? place : place + "." + field;
    }
}
