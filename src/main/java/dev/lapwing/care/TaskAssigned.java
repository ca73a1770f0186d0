package dev.lapwing.care;

import java.util.UUID;

/**
 * A person gave a task to a tech. Told inside the transaction.
 *
 * @param taskId the task
 * @param tech sign-in name of who has it now
 * @param before sign-in name of who had it, or null
 * @param by who assigned it
 */
public record TaskAssigned(UUID taskId, String tech, String before, String by) {}
