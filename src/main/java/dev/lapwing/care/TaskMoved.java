package dev.lapwing.care;

import dev.lapwing.care.domain.TaskState;
import java.util.UUID;

/**
 * A task was opened or has changed hands or state by what a person did. Told inside the transaction. The sweep does not
 * tell of the tasks it plans.
 *
 * @param state the state it is in now
 * @param opened whether it is new
 */
public record TaskMoved(UUID taskId, TaskState state, boolean opened) {}
