package dev.lapwing.care.domain;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** What a person can do to a task, and in which states. */
public enum TaskMove {
    ASSIGN("assigned", TaskState.ASSIGNED, TaskState.PLANNED, TaskState.ASSIGNED, TaskState.ACCEPTED),
    ACCEPT("accepted", TaskState.ACCEPTED, TaskState.PLANNED, TaskState.ASSIGNED),
    START("started", TaskState.UNDER_WAY, TaskState.ACCEPTED),
    CALL_OFF(
            "called off",
            TaskState.CALLED_OFF,
            TaskState.PLANNED,
            TaskState.ASSIGNED,
            TaskState.ACCEPTED,
            TaskState.UNDER_WAY),
    FINISH("signed off", TaskState.DONE, TaskState.UNDER_WAY);

    private final String participle;
    private final TaskState result;
    private final Set<TaskState> allowedIn;

    TaskMove(String participle, TaskState result, TaskState... allowedIn) {
        this.participle = participle;
        this.result = result;
        this.allowedIn = EnumSet.copyOf(Set.of(allowedIn));
    }

    /** Returns the state after the move. */
    public TaskState result() {
        return result;
    }

    /** Returns why the move is not possible in this state, or empty when it is. */
    public Optional<String> refusal(TaskState state) {
        if (allowedIn.contains(state)) {
            return Optional.empty();
        }
        return Optional.of("The task is " + state.word() + ", so it cannot be " + participle);
    }
}
