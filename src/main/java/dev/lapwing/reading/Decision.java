package dev.lapwing.reading;

/**
 * The one decision about a note, from what the rules found and what like notes turned out to be.
 *
 * @param verdict the answer
 * @param score weight of the case for contact, 0 to 1
 */
record Decision(ContactVerdict verdict, double score) {
    /** Thresholds and guards, set by cross-validation on the development notes. */
    private static final double CONTACT = 0.5;

    private static final double UNCLEAR = 0.2;
    private static final double PLAINLY_SAID = 0.84;
    private static final double WORTH_ASKING = 0.4;
    private static final double HALF_LIKELY = 0.35;
    private static final double BELOW_UNCLEAR = 0.19;
    private static final double JUST_OPEN = 0.49;
    private static final double BELOW = 0.01;

    /**
     * Decides. What the rules find plainly said is never dropped, at the least it is asked about; what is only supposed
     * is at the most asked about, and is asked about when it would be contact if said; a limit higher than the unit raises no question; a note without any telling word is never more than nothing.
     */
    static Decision of(NoteCase noteCase, double likelihood) {
        double score =
                noteCase.hasTellingWord() ? guarded(noteCase.judgement(), likelihood) : Math.min(likelihood, BELOW);
        return new Decision(verdict(score), score);
    }

    private static double guarded(Judgement judgement, double likelihood) {
        if (judgement.score() >= PLAINLY_SAID) {
            return Math.max(likelihood, likelihood > HALF_LIKELY ? CONTACT : UNCLEAR);
        }
        if (judgement.onlyHighEnough() && likelihood < HALF_LIKELY) {
            return Math.min(likelihood, BELOW_UNCLEAR);
        }
        if (judgement.onlySupposed()) {
            double least = judgement.score() >= WORTH_ASKING ? UNCLEAR : 0;
            return Math.max(least, Math.min(likelihood, JUST_OPEN));
        }
        return likelihood;
    }

    private static ContactVerdict verdict(double score) {
        if (score >= CONTACT) {
            return ContactVerdict.CONTACT;
        }
        return score >= UNCLEAR ? ContactVerdict.UNCLEAR : ContactVerdict.NONE;
    }
}
