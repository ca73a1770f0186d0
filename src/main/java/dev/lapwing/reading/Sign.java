package dev.lapwing.reading;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** What a word or phrase of a lexicon stands for; each is a section of the lexicon file, named by {@link #word()}. */
enum Sign {
    /** Hangs or stands above a road or a parking place. */
    OVERHEAD(EvidenceRole.OVERHEAD),
    /** May be met above or beside the unit: tree, wall, garage. */
    TALL(EvidenceRole.OVERHEAD),
    /** Says that a thing is low or above: makes a tall thing an overhead one. */
    LOW(EvidenceRole.OVERHEAD),
    /** The roof and what is mounted on it. */
    ROOF(EvidenceRole.ROOF),
    /** Parts of the unit below its roofline. */
    BELOW(EvidenceRole.BELOW_ROOF),
    /** Things met on the ground: kerb, car, deer. */
    OTHER(EvidenceRole.BELOW_ROOF),
    /** Things that come down from above by themselves: hail, cones, ice. */
    DROPPING(EvidenceRole.FALL),
    /** What overhead things leave behind: twigs, bark, paint. */
    DEBRIS(EvidenceRole.DAMAGE),
    /** What overhead things leave only by touching: their paint, concrete dust. */
    TRACE(EvidenceRole.DAMAGE),
    /** The unit as a whole, and those in it. */
    UNIT(null),
    /** Somebody's or something else's: a head, a tent, the lorry in front. What happens to it does not concern the unit. */
    ELSEWHERE(EvidenceRole.BELOW_ROOF),
    /** Says whose a thing is: my, his. With a thing no lexicon knows, it is a belonging. */
    OWNER(null),
    /** Somebody's thing that is no part of the unit: my hat, her kite. */
    BELONGING(EvidenceRole.BELOW_ROOF),
    /** A person: the one who hits the roof in anger. */
    PERSON(null),
    /** A sound word that means contact. */
    CONTACT(EvidenceRole.CONTACT),
    /** A word that means contact only with something overhead as its object: met, found, kissed. */
    TOUCH(EvidenceRole.CONTACT),
    /** Caught fast: stuck, wedged, jammed. */
    STUCK(EvidenceRole.CONTACT),
    /** Came down. */
    FALL(EvidenceRole.FALL),
    /** Damage that roof parts take only from outside: ripped off, bent, missing. */
    DAMAGE(EvidenceRole.DAMAGE),
    /** Damage that may be wear: cracked, leaking, loose. */
    WEAR(EvidenceRole.DAMAGE),
    /** A sound heard. */
    NOISE(EvidenceRole.CONTACT),
    /** Went under or through. */
    PASSAGE(EvidenceRole.OVERHEAD),
    /** A whole statement of contact that needs no other word. */
    STRIKE(EvidenceRole.CONTACT),
    /** A statement of contact when something overhead or of the roof is named near it. */
    HINT(EvidenceRole.CONTACT),
    /** Too low, taller than: contact, unless the driver then turned back. */
    TIGHT(EvidenceRole.OVERHEAD),
    /** A whole statement that leaves contact open. */
    DOUBT(EvidenceRole.CONTACT),
    /** A figure of speech: its words are not read. */
    FIGURE(null),
    NOT(EvidenceRole.NEGATION),
    /** Undoes an earlier denial in its sentence: "can't say it didn't". */
    NOT_TWICE(null),
    /** Denies what was said up to five words before. */
    NOT_AFTER(EvidenceRole.NEGATION),
    /** Looks like a negation and is none. */
    NOT_REALLY(null),
    /** Nearly, just missed, cleared by: contact did not happen. */
    NEAR_MISS(EvidenceRole.NEGATION),
    /** Turned round, took another way: what was too low was not driven under. */
    AVOIDED(EvidenceRole.NEGATION),
    MAYBE(EvidenceRole.HYPOTHETICAL),
    IF(EvidenceRole.HYPOTHETICAL),
    IF_NOT_REALLY(null),
    PAST(EvidenceRole.PAST),
    /** Marks the sentence as past wherever it stands. */
    PAST_AROUND(EvidenceRole.PAST),
    PAST_NOT_REALLY(null),
    /** Ends every scope. */
    END(null),
    END_IF(null),
    END_PAST(null),
    /** Starts a new clause. */
    CLAUSE(null),
    /** Everyday words: known, without meaning here; they tell the language and are never taken for misspellings. */
    PLAIN(null);

    private static final Map<String, Sign> BY_WORD = new HashMap<>();

    static {
        for (Sign sign : values()) {
            BY_WORD.put(sign.word(), sign);
        }
    }

    private static final Sign[] BY_ORDINAL = values();

    private final EvidenceRole role;

    Sign(EvidenceRole role) {
        this.role = role;
    }

    /** Returns the role of a piece with this sign, or null when it is no evidence by itself. */
    EvidenceRole role() {
        return role;
    }

    /** Returns the section name in lexicon files, such as {@code not-after}. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** Returns the sign of a section name, or null. */
    static Sign ofWord(String word) {
        return BY_WORD.get(word);
    }

    /** Returns the sign of the lowest bit set. */
    static Sign ofLowestBit(long bits) {
        return BY_ORDINAL[Long.numberOfTrailingZeros(bits)];
    }

    long bit() {
        return 1L << ordinal();
    }

    static long bits(Sign first, Sign... more) {
        long bits = first.bit();
        for (Sign sign : more) {
            bits |= sign.bit();
        }
        return bits;
    }
}
