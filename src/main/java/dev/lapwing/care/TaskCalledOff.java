package dev.lapwing.care;

import java.util.UUID;

/**
 * A person ended a task that need not be done. Told inside the transaction.
 *
 * @param tech sign-in name of who had it, or null
 * @param why the reason given
 * @param by who called it off
 */
public record TaskCalledOff(UUID taskId, String tech, String why, String by) {}
