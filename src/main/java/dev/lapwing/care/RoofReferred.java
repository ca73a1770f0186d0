package dev.lapwing.care;

import java.util.UUID;

/**
 * Somebody stopped work on a roof and referred it to a workshop. Told inside the transaction.
 *
 * @param taskId the task that was stopped
 * @param why what they said
 * @param by sign-in name of who stopped
 */
public record RoofReferred(UUID taskId, String why, String by) {}
