package dev.lapwing.reading;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts a judgement into words: verdict, reason, and evidence marked in the note as it was sent. */
final class Answer {
    private final String note;
    private final Tokens tokens;
    private final Lexicon lexicon;

    Answer(String note, Tokens tokens, Lexicon lexicon) {
        this.note = note;
        this.tokens = tokens;
        this.lexicon = lexicon;
    }

    Reading of(Judgement judgement) {
        double score = judgement.score();
        Finding decisive = judgement.decisive();
        ContactVerdict verdict = verdict(score);
        return new Reading(verdict, lexicon.language(), score, reason(decisive, verdict), evidence(judgement));
    }

    private static ContactVerdict verdict(double score) {
        if (score >= Finding.CONTACT) {
            return ContactVerdict.CONTACT;
        }
        return score >= Finding.UNCLEAR ? ContactVerdict.UNCLEAR : ContactVerdict.NONE;
    }

    private String reason(Finding finding, ContactVerdict verdict) {
        Sentence sentence = finding.sentence();
        if (verdict == ContactVerdict.NONE && finding.event() != null) {
            sentence = switch (finding.event().standing()) {
                case DENIED -> Sentence.DENIED;
                case NEARLY -> Sentence.NEARLY;
                case CONDITIONAL -> Sentence.ONLY_SUPPOSED;
                case PAST -> Sentence.BEFORE;
                default -> finding.weight() > 0 ? Sentence.NOTHING : sentence;
            };
        }
        return lexicon.sentence(sentence)
                .replace("{0}", quoted(finding.event()))
                .replace("{1}", quoted(finding.thing() == null ? finding.event() : finding.thing()));
    }

    private String quoted(Signal signal) {
        return signal == null ? "" : "\u201c" + piece(signal).replaceAll("\\s+", " ") + "\u201d";
    }

    private String piece(Signal signal) {
        return note.substring(tokens.noteStart(signal.from), tokens.noteEnd(signal.to - 1));
    }

    private List<Evidence> evidence(Judgement judgement) {
        List<Evidence> all = new ArrayList<>();
        judgement.standing().forEach(finding -> mark(finding, all));
        judgement.takenBack().forEach(finding -> mark(finding, all));
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
}
