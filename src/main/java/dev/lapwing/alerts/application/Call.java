package dev.lapwing.alerts.application;

import dev.lapwing.alerts.domain.Climb;
import dev.lapwing.alerts.domain.Rung;
import dev.lapwing.care.storage.CareTask;
import java.time.Duration;

/**
 * Someone is called about a strike.
 *
 * @param waited since the report for an inspection nobody accepted, since acceptance for one not started
 */
record Call(CareTask task, Climb.Reason reason, Rung rung, Duration waited) {}
