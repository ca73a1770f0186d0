package dev.lapwing.returns.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.reading.ContactReader;
import dev.lapwing.reading.ContactReaders;
import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class BatchReadingTest {
    private static final int NOTES = 100_000;
    /** Lines that fit into the two buffers of 8,192 characters between the sender and the receiver. */
    private static final int FIT_INTO_BUFFERS = 500;

    private long sent;
    private long received;
    private long mostUnderWay;

    @Test
    void aHundredThousandNotesPassThroughWithFewUnderWay() throws IOException {
        ContactReader reader = ContactReaders.load(Path.of("shared/reading"));
        var batch = new BatchReading(
                new ObjectMapper(), request -> ReadingAnswer.of(reader.read(request.note(), null, null)));

        batch.run(new Notes(), new Answers());

        assertThat(received).isEqualTo(NOTES);
        assertThat(mostUnderWay).isBetween(1L, (long) FIT_INTO_BUFFERS);
    }

    /** Makes each line when it is asked for. */
    private final class Notes extends Reader {
        private String line = "";
        private int at;

        @Override
        public int read(char[] into, int from, int length) {
            if (at == line.length()) {
                if (sent == NOTES) {
                    return -1;
                }
                line = "{\"note\": \"Trip " + sent + ": a branch scraped the roof by the lake.\"}\n";
                at = 0;
                sent++;
                mostUnderWay = Math.max(mostUnderWay, sent - received);
            }
            int count = Math.min(length, line.length() - at);
            line.getChars(at, at + count, into, from);
            at += count;
            return count;
        }

        @Override
        public void close() {}
    }

    /** Counts lines and keeps none. */
    private final class Answers extends Writer {
        @Override
        public void write(char[] from, int start, int length) {
            for (int i = start; i < start + length; i++) {
                received += from[i] == '\n' ? 1 : 0;
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }
}
