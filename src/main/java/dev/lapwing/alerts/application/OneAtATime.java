package dev.lapwing.alerts.application;

import io.quarkus.narayana.jta.QuarkusTransaction;
import java.util.List;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Sends one thing at a time, each in a transaction of its own that holds the thing's row locked. If the service dies
 * before the transaction ends, the database lets go of the row and the thing is sent again.
 */
public final class OneAtATime {
    /** More than there are senders, so that those of other nodes do not hide what is left. */
    public static final int LOOKED_AT = 40;

    /** What came of looking for something to send. */
    public enum Outcome {
        NOTHING_DUE,
        TAKEN_BY_ANOTHER,
        DEALT_WITH,
        NOBODY_THERE
    }

    private OneAtATime() {}

    /**
     * Sends the first thing that is due and that nobody else is sending.
     *
     * @param due finds what is due, in the order in which it goes; called in a transaction
     * @param seconds the time limit of the transaction that sends
     * @param claimAndSend locks a thing and sends it, or says that another has it; called in a transaction
     */
    public static Outcome next(Supplier<List<UUID>> due, int seconds, Function<UUID, Outcome> claimAndSend) {
        for (UUID id : QuarkusTransaction.requiringNew().call(due::get)) {
            Outcome outcome = QuarkusTransaction.requiringNew().timeout(seconds).call(() -> claimAndSend.apply(id));
            if (outcome != Outcome.TAKEN_BY_ANOTHER) {
                return outcome;
            }
        }
        return Outcome.NOTHING_DUE;
    }
}
