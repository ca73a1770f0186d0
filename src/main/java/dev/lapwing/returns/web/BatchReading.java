package dev.lapwing.returns.web;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.util.List;
import java.util.function.Function;

/** Reads newline-delimited notes one by one and writes each answer at once, so that memory does not grow. */
final class BatchReading {
    private static final int LONGEST_LINE = 1_000_000;

    private final ObjectMapper json;
    private final Function<ContactReadingResource.NoteToRead, ReadingAnswer> reading;

    /** What stands in the place of an answer when a line cannot be read; the other lines are read all the same. */
    record BadLine(long line, String detail, List<FieldError> errors) {}

    BatchReading(ObjectMapper json, Function<ContactReadingResource.NoteToRead, ReadingAnswer> reading) {
        this.json = json;
        this.reading = reading;
    }

    void run(Reader in, Writer out) throws IOException {
        var lines = new BufferedReader(in);
        var answers = new BufferedWriter(out);
        long number = 0;
        for (String line = next(lines); line != null; line = next(lines)) {
            number++;
            if (!line.isBlank()) {
                answers.write(json.writeValueAsString(answer(line, number)));
                answers.write('\n');
            }
        }
        answers.flush();
    }

    private Object answer(String line, long number) {
        if (line.length() > LONGEST_LINE) {
            return new BadLine(number, "The line is longer than " + LONGEST_LINE + " characters", List.of());
        }
        try {
            var note = json.readValue(line, ContactReadingResource.NoteToRead.class);
            return note == null ? new BadLine(number, "The line holds no note", List.of()) : reading.apply(note);
        } catch (JacksonException wrong) {
            return new BadLine(number, "The line is not the JSON that was expected", List.of());
        } catch (Refused refused) {
            return new BadLine(number, refused.getMessage(), refused.errors());
        }
    }

    /** Returns the next line, cut just past the limit, or null at the end. */
    private static String next(BufferedReader in) throws IOException {
        int read = in.read();
        if (read < 0) {
            return null;
        }
        var line = new StringBuilder();
        for (; read >= 0 && read != '\n'; read = in.read()) {
            if (line.length() <= LONGEST_LINE) {
                line.append((char) read);
            }
        }
        return line.toString();
    }
}
