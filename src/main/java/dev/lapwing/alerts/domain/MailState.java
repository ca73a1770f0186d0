package dev.lapwing.alerts.domain;

import dev.lapwing.platform.Worded;
import java.util.EnumSet;
import java.util.Set;

/** Where a mail of the outbox stands. */
public enum MailState implements Worded {
    WAITING("waiting"),
    SENT("sent"),
    /** Tried without success; it is tried again. */
    FAILED("failed"),
    /** Not tried again unless a person asks for it. */
    GIVEN_UP("given-up"),
    /** It waited too long to go by itself; a digest says what it said. */
    MERGED("merged"),
    /** It waited until it was no longer true, and never goes. */
    DROPPED("dropped");

    /** The states of mails that still have to go. */
    public static final Set<MailState> TO_GO = Set.copyOf(EnumSet.of(WAITING, FAILED));

    private final String word;

    MailState(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
