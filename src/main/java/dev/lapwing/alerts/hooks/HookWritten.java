package dev.lapwing.alerts.hooks;

/** A delivery was written, or may go now. Told inside the transaction, so that it is acted on after it. */
record HookWritten() {}
