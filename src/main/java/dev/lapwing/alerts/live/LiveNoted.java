package dev.lapwing.alerts.live;

/** An event was written down. Told inside the transaction, so that it is acted on after it. */
record LiveNoted() {}
