package dev.lapwing.care.domain;

/** Where a task stands. */
public enum TaskState {
    PLANNED("planned"),
    ASSIGNED("assigned"),
    ACCEPTED("accepted"),
    UNDER_WAY("under-way"),
    DONE("done"),
    CALLED_OFF("called-off");

    private final String word;

    TaskState(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    public boolean open() {
        return this != DONE && this != CALLED_OFF;
    }
}
