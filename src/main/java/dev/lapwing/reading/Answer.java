package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts a decision into words: the reason, and the evidence marked in the note as it was sent. */
final class Answer {
    /** Pieces marked when no single finding carries the decision. */
    private static final int MOST_PIECES = 12;

    private final String note;
    private final NoteCase noteCase;
    private final Tokens tokens;
    private final Lexicon lexicon;

    Answer(String note, NoteCase noteCase, Lexicon lexicon) {
        this.note = note;
        this.noteCase = noteCase;
        this.tokens = noteCase.tokens();
        this.lexicon = lexicon;
    }

    Reading of(Decision decision) {
        Judgement judgement = noteCase.judgement();
        Finding finding = judgement.decisive();
        boolean carried = finding.event() != null && finding.event().stands() && finding.weight() > 0;
        String reason;
        List<Evidence> evidence = new ArrayList<>();
        if (decision.verdict() == ContactVerdict.NONE) {
            reason = carried ? lexicon.sentence(Sentence.NOTHING) : reasonForNone(finding);
        } else if (carried) {
            reason = worded(sentence(finding, decision.verdict()), finding.event(), finding.thing());
        } else {
            boolean contact = decision.verdict() == ContactVerdict.CONTACT;
            List<Signal> telling = noteCase.tellingSignals(MOST_PIECES);
            telling.forEach(signal -> add(signal, evidence));
            reason = worded(
                    contact ? Sentence.TOGETHER_CONTACT : Sentence.TOGETHER_OPEN,
                    telling.isEmpty() ? null : telling.get(0),
                    null);
        }
        judgement.standing().forEach(standing -> mark(standing, evidence));
        judgement.takenBack().forEach(takenBack -> mark(takenBack, evidence));
        return new Reading(decision.verdict(), lexicon.language(), decision.score(), reason, apart(evidence));
    }

    /** A finding that says "contact" is worded as open when the note as a whole leaves it open. */
    private static Sentence sentence(Finding finding, ContactVerdict verdict) {
        return verdict == ContactVerdict.UNCLEAR && !finding.sentence().isOpen()
                ? Sentence.TOGETHER_OPEN
                : finding.sentence();
    }

    private String reasonForNone(Finding finding) {
        Sentence sentence = finding.sentence();
        if (finding.event() != null) {
            sentence = switch (finding.event().standing()) {
                case DENIED -> Sentence.DENIED;
                case NEARLY -> Sentence.NEARLY;
                case CONDITIONAL -> Sentence.ONLY_SUPPOSED;
                case PAST -> Sentence.BEFORE;
                default -> sentence;
            };
        }
        return worded(sentence, finding.event(), finding.thing());
    }

    private String worded(Sentence sentence, Signal event, Signal thing) {
        return lexicon.sentence(sentence)
                .replace("{0}", quoted(event))
                .replace("{1}", quoted(thing == null ? event : thing));
    }

    private String quoted(Signal signal) {
        return signal == null ? "" : "\u201c" + piece(signal).replaceAll("\\s+", " ") + "\u201d";
    }

    private String piece(Signal signal) {
        return note.substring(tokens.noteStart(signal.from), tokens.noteEnd(signal.to - 1));
    }

    private void mark(Finding finding, List<Evidence> all) {
        for (Signal signal : finding.signals()) {
            add(signal, all);
        }
        if (finding.event().trigger() != null) {
            add(finding.event().trigger(), all);
        }
    }

    private void add(Signal signal, List<Evidence> all) {
        for (long bits = signal.signs; bits != 0; bits &= bits - 1) {
            EvidenceRole role = Sign.values()[Long.numberOfTrailingZeros(bits)].role();
            if (role != null) {
                int start = tokens.noteStart(signal.from);
                int end = tokens.noteEnd(signal.to - 1);
                all.add(new Evidence(start, end, note.substring(start, end), role));
                return;
            }
        }
    }

    /** Puts pieces in order and leaves out those that overlap an earlier or longer one. */
    private static List<Evidence> apart(List<Evidence> all) {
        all.sort(Comparator.comparingInt(Evidence::start).thenComparing(Evidence::end, Comparator.reverseOrder()));
        List<Evidence> apart = new ArrayList<>();
        int end = 0;
        for (Evidence evidence : all) {
            if (evidence.start() >= end) {
                apart.add(evidence);
                end = evidence.end();
            }
        }
        return apart;
    }
}
