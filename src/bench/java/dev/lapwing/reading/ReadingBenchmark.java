package dev.lapwing.reading;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.tokenattributes.CharTermAttribute;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Time to read a note of a given length, beside the time to break the same text into words with the same analyser. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class ReadingBenchmark {
    private static final String STORY = "Lovely week by the lake, van ran well and the kids want to go again. On the way"
            + " out of the site we met a low branch by the gate and it scraped along the roof, no damge to the side"
            + " panels as far as I can see. The fridge door rattles and one of the mugs broke, sorry about that."
            + " We filled the water and emptied the tanks, diesel is full. Mirror is fine, bumper has an old scuff that"
            + " was there at pickup. Weather was mixed, two days of rain and then sun until Sunday. ";

    /** Length of the note in characters. */
    @Param({"80", "100", "1000", "2000", "10000", "100000"})
    public int length;

    private final NoteAnalyzer analyzer = new NoteAnalyzer();
    private ContactReader reader;
    private String note;

    @Setup
    public void prepare() {
        reader = ContactReaders.load(Path.of("shared/reading"));
        note = STORY.repeat(length / STORY.length() + 1).substring(0, length);
    }

    @Benchmark
    public Reading read() {
        return reader.read(note, null, 3.1);
    }

    @Benchmark
    public int tokenise() throws IOException {
        int letters = 0;
        try (TokenStream stream = analyzer.tokenStream("note", new StringReader(note))) {
            CharTermAttribute term = stream.addAttribute(CharTermAttribute.class);
            stream.reset();
            while (stream.incrementToken()) {
                letters += term.length();
            }
            stream.end();
        }
        return letters;
    }
}
