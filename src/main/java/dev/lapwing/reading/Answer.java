package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Puts a decision into words: the reason, and the evidence marked in the note as it was sent. */
final class Answer {
    /** Pieces marked when no single finding carries the decision. */
    private static final int MOST_PIECES = 12;

    private static final java.util.regex.Pattern BLANKS = java.util.regex.Pattern.compile("\\s+");

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
        Set<Signal> marked = new LinkedHashSet<>();
        if (decision.verdict() == ContactVerdict.NONE) {
            reason = carried ? lexicon.sentence(Sentence.NOTHING) : reasonForNone(finding);
        } else if (carried) {
            reason = worded(sentence(finding, decision.verdict()), finding.event(), finding.thing());
        } else {
            boolean contact = decision.verdict() == ContactVerdict.CONTACT;
            List<Signal> telling = noteCase.tellingSignals(MOST_PIECES);
            marked.addAll(telling);
            reason = worded(
                    contact ? Sentence.TOGETHER_CONTACT : Sentence.TOGETHER_OPEN,
                    telling.isEmpty() ? null : telling.get(0),
                    null);
        }
        judgement.standing().forEach(standing -> mark(standing, marked));
        judgement.takenBack().forEach(takenBack -> mark(takenBack, marked));
        return new Reading(decision.verdict(), lexicon.language(), decision.score(), reason, evidence(marked));
    }

    /** A finding is worded as the note as a whole is read, even if alone it would say more or less. */
    private static Sentence sentence(Finding finding, ContactVerdict verdict) {
        boolean open = verdict == ContactVerdict.UNCLEAR;
        if (open == finding.sentence().isOpen() && !finding.sentence().isNone()) {
            return finding.sentence();
        }
        return open ? Sentence.TOGETHER_OPEN : Sentence.TOGETHER_CONTACT;
    }

    private String reasonForNone(Finding finding) {
        Sentence sentence = finding.sentence();
        if (finding.event() != null) {
            sentence = switch (finding.event().standing()) {
                case DENIED -> Sentence.DENIED;
                case NEARLY -> Sentence.NEARLY;
                case CONDITIONAL -> Sentence.ONLY_SUPPOSED;
                case PAST -> Sentence.BEFORE;
                default -> sentence.isNone() ? sentence : Sentence.NOTHING;
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
        return signal == null ? "" : "\u201c" + BLANKS.matcher(piece(signal)).replaceAll(" ") + "\u201d";
    }

    private String piece(Signal signal) {
        return note.substring(tokens.noteStart(signal.from), tokens.noteEnd(signal.to - 1));
    }

    private static void mark(Finding finding, Set<Signal> all) {
        all.addAll(finding.signals());
        if (finding.event().trigger() != null) {
            all.add(finding.event().trigger());
        }
    }

    /** Turns signals into marked pieces, in order; leaves out those that overlap an earlier or longer one. */
    private List<Evidence> evidence(Set<Signal> marked) {
        List<Signal> ordered = new ArrayList<>(marked);
        ordered.sort(Comparator.<Signal>comparingInt(signal -> signal.from).thenComparingInt(signal -> -signal.to));
        List<Evidence> apart = new ArrayList<>();
        int next = 0;
        for (Signal signal : ordered) {
            EvidenceRole role = signal.from < next ? null : role(signal);
            if (role != null) {
                int start = tokens.noteStart(signal.from);
                int end = tokens.noteEnd(signal.to - 1);
                apart.add(new Evidence(start, end, note.substring(start, end), role));
                next = signal.to;
            }
        }
        return apart;
    }

    private static EvidenceRole role(Signal signal) {
        for (long bits = signal.signs; bits != 0; bits &= bits - 1) {
            EvidenceRole role = Sign.ofLowestBit(bits).role();
            if (role != null) {
                return role;
            }
        }
        return null;
    }
}
