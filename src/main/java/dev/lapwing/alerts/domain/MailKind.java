package dev.lapwing.alerts.domain;

import dev.lapwing.platform.Worded;

/** What a mail is for. */
public enum MailKind implements Worded {
    /** A roof was struck; to the tech who inspects it and the coordinators of the depot. */
    STRIKE("strike"),
    /** Work was given to the tech. */
    ASSIGNMENT("assignment"),
    /** Work the tech had was given to someone else. */
    HANDED_OVER("handed over"),
    /** Nobody has a strike as they should. */
    ESCALATION("escalation"),
    /** Work the tech had need not be done. */
    CALLED_OFF("called off"),
    /** What is to be done at a depot today. */
    DAILY_DIGEST("daily digest"),
    /** What is to be done at a depot this week. */
    WEEK_AHEAD("week ahead"),
    /** What mails said that could not go for long. */
    OUTAGE_DIGEST("outage digest");

    private final String word;

    MailKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }
}
