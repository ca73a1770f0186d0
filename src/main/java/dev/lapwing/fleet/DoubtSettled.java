package dev.lapwing.fleet;

import java.time.Instant;
import java.util.UUID;

/**
 * The desk answered whether a unit's roof was struck. A strike, if it was one, has been told before.
 *
 * @param questionId the question
 * @param contact whether there was contact
 * @param at when it was answered
 * @param by who answered
 * @param why what the answer rests on
 */
public record DoubtSettled(UUID questionId, boolean contact, Instant at, String by, String why) {}
