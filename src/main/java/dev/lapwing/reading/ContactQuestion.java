package dev.lapwing.reading;

import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Words the one plain question that an unclear reading puts to the desk, in the note's language. */
public final class ContactQuestion {
    private static final Set<EvidenceRole> WORTH_QUOTING =
            Set.of(EvidenceRole.CONTACT, EvidenceRole.FALL, EvidenceRole.DAMAGE, EvidenceRole.OVERHEAD);

    private final Map<String, LexiconFile> lexicons;

    private ContactQuestion(Map<String, LexiconFile> lexicons) {
        this.lexicons = lexicons;
    }

    /**
     * Loads the wording from the lexicon files of a folder.
     *
     * @throws LexiconException as {@link ContactReaders#load}
     */
    public static ContactQuestion load(Path folder) {
        return new ContactQuestion(ContactReaders.lexicons(folder).stream()
                .collect(Collectors.toMap(LexiconFile::language, file -> file)));
    }

    /** Returns the question, naming the piece of the note that gave rise to it where there is one. */
    public String about(Reading reading) {
        LexiconFile lexicon = lexicons.get(reading.language());
        if (lexicon == null) {
            throw new IllegalArgumentException("no lexicon for language " + reading.language());
        }
        return reading.evidence().stream()
                .filter(evidence -> WORTH_QUOTING.contains(evidence.role()))
                .findFirst()
                .map(evidence -> lexicon.sentence(Sentence.QUESTION_ABOUT)
                        .replace("{0}", "\u201c" + evidence.text().replaceAll("\\s+", " ") + "\u201d"))
                .orElseGet(() -> lexicon.sentence(Sentence.QUESTION));
    }
}
