package dev.lapwing.care;

import java.util.UUID;

/**
 * A strike has led to a hold and an urgent inspection. Told inside the transaction that opens them.
 *
 * @param taskId the inspection
 * @param holdId the hold
 */
public record StrikeWorkOpened(UUID taskId, UUID holdId) {}
