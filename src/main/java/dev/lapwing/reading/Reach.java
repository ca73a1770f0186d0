package dev.lapwing.reading;

/** How far a trigger reaches forward: to the end of the sentence, to a comma that opens no list, or so many words. */
final class Reach {
    static final int WORDS = 12;

    private final Tokens tokens;

    Reach(Tokens tokens) {
        this.tokens = tokens;
    }

    /** Returns the token behind the last one a trigger may reach. */
    int after(Signal trigger, boolean stopsAtComma) {
        int limit = Math.min(tokens.size, trigger.to + WORDS);
        for (int i = trigger.to; i < limit; i++) {
            boolean comma =
                    tokens.breakBefore[i] == Tokens.COMMA && (i == trigger.to || stopsAtComma && !listGoesOn(i));
            if (tokens.breakBefore[i] == Tokens.STOP || comma) {
                return i;
            }
        }
        return limit;
    }

    private boolean listGoesOn(int token) {
        for (int i = token; i < tokens.size && i < token + 6; i++) {
            if (tokens.breakBefore[i] == Tokens.STOP) {
                return false;
            }
            if (isOr(i)) {
                return true;
            }
        }
        return false;
    }

    private boolean isOr(int token) {
        int length = tokens.end[token] - tokens.start[token];
        if (length > 3) {
            return false;
        }
        String written = tokens.written(token);
        return switch (written) {
            case "or", "nor", "ni", "o", "ou", "OR", "NI", "OU" -> true;
            default -> false;
        };
    }

    /** Returns whether an "or" stands between two signals. */
    boolean joined(Signal before, Signal signal) {
        for (int i = before.to; i < signal.from; i++) {
            if (isOr(i)) {
                return true;
            }
        }
        return false;
    }
}
