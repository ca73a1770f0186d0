package dev.lapwing.alerts.live;

import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.Sse;
import jakarta.ws.rs.sse.SseEventSink;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One connection that listens.
 *
 * <p>It has no queue of its own: it holds a place among the shared events and moves on when the last write has gone
 * out, so a slow reader costs nobody anything. One who fell far behind is told to look at everything anew.
 */
final class Listener {
    /** Beyond this, to look anew is less work than to be told of each. */
    private static final int MOST_BEHIND = 500;

    private static final String LOOK_ANEW = "{\"kind\":\"resync\"}";
    private static final long RETRY_MILLIS = 2000;

    private final SseEventSink sink;
    private final Sse sse;
    private final Recent recent;
    private final String depot;
    private final Instant endsAt;
    private final AtomicInteger calls = new AtomicInteger();
    private volatile long place;
    private volatile boolean signOfLifeDue = true;
    private volatile boolean gone;
    private volatile Instant waitsSince;

    /**
     * @param depot code of the depot to hear of, or null for all
     * @param place the place of the last event the listener knows
     */
    Listener(SseEventSink sink, Sse sse, Recent recent, String depot, long place, Instant endsAt) {
        this.sink = sink;
        this.sse = sse;
        this.recent = recent;
        this.depot = depot;
        this.place = place;
        this.endsAt = endsAt;
    }

    /** Sends what there is to send. Never waits. */
    void wake() {
        if (calls.getAndIncrement() == 0) {
            sendOn();
        }
    }

    /** Notes that a sign of life is due, ends what is over or stuck, and returns whether it still listens. */
    boolean beat(Instant now, Duration longestWait) {
        Instant waiting = waitsSince;
        boolean stuck = waiting != null && waiting.plus(longestWait).isBefore(now);
        if (gone || stuck || sink.isClosed() || now.isAfter(endsAt)) {
            end();
            return false;
        }
        if (waiting == null && calls.get() > 0) {
            waitsSince = now;
        }
        signOfLifeDue = true;
        wake();
        return true;
    }

    void end() {
        gone = true;
        if (!sink.isClosed()) {
            sink.close();
        }
    }

    private void sendOn() {
        int seen = calls.get();
        while (!gone) {
            OutboundSseEvent next = next();
            if (next == null) {
                waitsSince = null;
                seen = calls.addAndGet(-seen);
                if (seen == 0) {
                    return;
                }
                continue;
            }
            CompletableFuture<?> sent = send(next);
            if (!sent.isDone()) {
                sent.whenComplete((done, failure) -> after(failure));
                return;
            }
            gone = gone || sent.isCompletedExceptionally();
        }
    }

    private void after(Throwable failure) {
        waitsSince = null;
        if (failure == null) {
            sendOn();
        } else {
            gone = true;
        }
    }

    private CompletableFuture<?> send(OutboundSseEvent event) {
        try {
            return sink.send(event).toCompletableFuture();
        } catch (IllegalStateException closed) {
            return CompletableFuture.failedFuture(closed);
        }
    }

    private OutboundSseEvent next() {
        if (!recent.reachesBackTo(place) || recent.newest() - place > MOST_BEHIND) {
            place = recent.newest();
            return data(LOOK_ANEW);
        }
        Happening next = recent.after(place);
        while (next != null) {
            place = next.position();
            if (depot == null || depot.equals(next.depot())) {
                return data(next.json());
            }
            next = recent.after(place);
        }
        if (signOfLifeDue) {
            signOfLifeDue = false;
            return sse.newEventBuilder()
                    .id(Long.toString(place))
                    .reconnectDelay(RETRY_MILLIS)
                    .comment("still here")
                    .build();
        }
        return null;
    }

    private OutboundSseEvent data(String json) {
        return sse.newEventBuilder()
                .id(Long.toString(place))
                .mediaType(MediaType.TEXT_PLAIN_TYPE)
                .data(String.class, json)
                .build();
    }
}
