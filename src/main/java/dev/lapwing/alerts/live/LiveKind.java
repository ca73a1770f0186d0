package dev.lapwing.alerts.live;

import dev.lapwing.care.domain.TaskState;
import dev.lapwing.platform.Worded;

/** What is told to listeners. */
enum LiveKind implements Worded {
    /** A roof was struck; its inspection is due now. */
    STRIKE("strike"),
    PLANNED("planned"),
    ASSIGNED("assigned"),
    ACCEPTED("accepted"),
    STARTED("started"),
    DONE("done"),
    CALLED_OFF("called-off"),
    HOLD("hold"),
    RELEASE("release");

    private final String word;

    LiveKind(String word) {
        this.word = word;
    }

    @Override
    public String word() {
        return word;
    }

    /** Returns what is told of a task that has come into this state. */
    static LiveKind of(TaskState state) {
        return switch (state) {
            case PLANNED -> PLANNED;
            case ASSIGNED -> ASSIGNED;
            case ACCEPTED -> ACCEPTED;
            case UNDER_WAY -> STARTED;
            case DONE -> DONE;
            case CALLED_OFF -> CALLED_OFF;
        };
    }
}
