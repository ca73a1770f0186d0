package dev.lapwing.reading;

import java.util.List;
import org.apache.lucene.analysis.Analyzer;
import org.apache.lucene.analysis.CharArraySet;
import org.apache.lucene.analysis.LowerCaseFilter;
import org.apache.lucene.analysis.TokenStream;
import org.apache.lucene.analysis.miscellaneous.ASCIIFoldingFilter;
import org.apache.lucene.analysis.standard.StandardTokenizer;
import org.apache.lucene.analysis.util.ElisionFilter;

/** Breaks a note into words, in small letters, without accents and without French elided articles. */
public final class NoteAnalyzer extends Analyzer {
    private static final CharArraySet ELIDED = CharArraySet.unmodifiableSet(new CharArraySet(
            List.of("l", "m", "t", "qu", "n", "s", "j", "d", "c", "jusqu", "lorsqu", "puisqu", "quoiqu"), true));

    @Override
    protected TokenStreamComponents createComponents(String field) {
        StandardTokenizer words = new StandardTokenizer();
        TokenStream folded = new ASCIIFoldingFilter(new LowerCaseFilter(words));
        return new TokenStreamComponents(words, new ElisionFilter(folded, ELIDED));
    }
}
