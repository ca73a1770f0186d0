package dev.lapwing.alerts.live;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.web.LivePlace;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.event.TransactionPhase;
import jakarta.inject.Inject;
import jakarta.ws.rs.sse.Sse;
import jakarta.ws.rs.sse.SseEventSink;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;

/**
 * Reads what happened once for all listeners of this node, in one thread, and has them send it on.
 *
 * <p>It looks at once when this node wrote something, and every second for what other nodes wrote.
 */
@ApplicationScoped
class LiveHub implements LivePlace {
    private static final Logger LOG = Logger.getLogger(LiveHub.class);
    private static final int AT_A_TIME = 500;
    private static final int MOST_KEPT = 20_000;
    private static final int MILLIS_TO_STOP = 5000;
    private static final Duration BETWEEN_TRIMS = Duration.ofMinutes(10);

    /** What a listener is told; the time is in UTC. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record Told(LiveKind kind, String unit, String depot, UUID task, UUID hold, OffsetDateTime at) {}

    private final Set<Listener> listeners = ConcurrentHashMap.newKeySet();
    private final Semaphore calls = new Semaphore(0);
    private final LiveSettings settings;
    private final ObjectMapper json;
    private final Clock clock;
    private volatile Recent recent;
    private volatile boolean stopping;
    private Thread thread;
    private Instant lastBeat = Instant.EPOCH;
    private Instant lastTrim = Instant.EPOCH;

    @Inject
    LiveHub(LiveSettings settings, ObjectMapper json, Clock clock, MeterRegistry meters) {
        this.settings = settings;
        this.json = json;
        this.clock = clock;
        meters.gaugeCollectionSize("lapwing.live.listeners", List.of(), listeners);
    }

    void starting(@Observes StartupEvent start) {
        long place = QuarkusTransaction.requiringNew().call(() -> LiveEvent.placeBeforeLast(MOST_KEPT));
        recent = new Recent(MOST_KEPT, place);
        thread = new Thread(this::run, "live");
        thread.setDaemon(true);
        thread.start();
    }

    void stopping(@Observes ShutdownEvent stop) throws InterruptedException {
        stopping = true;
        calls.release();
        thread.join(MILLIS_TO_STOP);
        listeners.forEach(Listener::end);
    }

    void noted(@Observes(during = TransactionPhase.AFTER_SUCCESS) LiveNoted event) {
        calls.release();
    }

    @Override
    public long now() {
        return recent.newest();
    }

    /**
     * Lets a connection listen.
     *
     * @param depot code of the depot to hear of, or null for all
     * @param place the last event it knows, or null to hear of what is new only
     * @return false when too many listen already
     */
    boolean add(SseEventSink sink, Sse sse, String depot, Long place) {
        if (listeners.size() >= settings.listeners()) {
            return false;
        }
        Instant endsAt = clock.instant().plus(settings.longest());
        var listener = new Listener(sink, sse, recent, depot, place == null ? recent.newest() : place, endsAt);
        listeners.add(listener);
        listener.wake();
        return true;
    }

    private void run() {
        while (!stopping) {
            try {
                look();
                beat();
                trim();
            } catch (RuntimeException e) {
                LOG.error("Looking for live events failed; it is tried again", e);
            }
            await();
        }
    }

    private void await() {
        try {
            if (calls.tryAcquire(settings.look().toMillis(), TimeUnit.MILLISECONDS)) {
                calls.drainPermits();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            stopping = true;
        }
    }

    private void look() {
        boolean more = true;
        while (more) {
            more = QuarkusTransaction.requiringNew().call(LiveNumbering::run);
        }
        List<LiveEvent> found;
        do {
            found = QuarkusTransaction.requiringNew().call(() -> LiveEvent.after(recent.newest(), AT_A_TIME));
            found.forEach(event -> recent.add(happening(event)));
            if (!found.isEmpty()) {
                listeners.forEach(Listener::wake);
            }
        } while (found.size() == AT_A_TIME);
    }

    private void beat() {
        Instant now = clock.instant();
        if (lastBeat.plus(settings.heartbeat()).isAfter(now)) {
            return;
        }
        lastBeat = now;
        listeners.removeIf(listener -> !listener.beat(now, settings.heartbeat().multipliedBy(4)));
    }

    private void trim() {
        Instant now = clock.instant();
        if (lastTrim.plus(BETWEEN_TRIMS).isAfter(now)) {
            return;
        }
        lastTrim = now;
        QuarkusTransaction.requiringNew().call(() -> LiveNumbering.trim(now.minus(settings.kept())));
    }

    private Happening happening(LiveEvent event) {
        var told = new Told(
                event.kind,
                event.unitNumber,
                event.depotCode,
                event.taskId,
                event.holdId,
                event.at.atOffset(ZoneOffset.UTC));
        try {
            return new Happening(event.position, event.depotCode, json.writeValueAsString(told));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an event is always JSON", e);
        }
    }
}
