package dev.lapwing.care;

import java.util.UUID;

/**
 * A roof was referred to a workshop, because of what was found or because somebody stopped in doubt. Told inside the
 * transaction.
 *
 * @param taskId the task whose sheet says so
 * @param why what was found or said
 * @param by sign-in name of who signed
 */
public record RoofReferred(UUID taskId, String why, String by) {}
