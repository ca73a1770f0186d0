package dev.lapwing.alerts.live;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.ws.rs.sse.OutboundSseEvent;
import jakarta.ws.rs.sse.SseEventSink;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import org.jboss.resteasy.reactive.server.jaxrs.SseImpl;
import org.junit.jupiter.api.Test;

/** What becomes of readers who read slowly, or not at all. */
class ListenerTest {
    private static final Instant NOON = Instant.parse("2026-05-03T12:00:00Z");
    private static final Duration MINUTE = Duration.ofMinutes(1);

    /** A connection that takes a write only when the test lets it. */
    private static final class Connection implements SseEventSink {
        private final List<OutboundSseEvent> given = new ArrayList<>();
        private final boolean slow;
        private CompletableFuture<Void> outstanding;
        private boolean closed;

        Connection(boolean slow) {
            this.slow = slow;
        }

        @Override
        public CompletionStage<?> send(OutboundSseEvent event) {
            given.add(event);
            outstanding = slow ? new CompletableFuture<>() : CompletableFuture.completedFuture(null);
            return outstanding;
        }

        List<Object> data() {
            return given.stream()
                    .map(OutboundSseEvent::getData)
                    .filter(data -> data != null)
                    .toList();
        }

        @Override
        public boolean isClosed() {
            return closed;
        }

        @Override
        public void close() {
            closed = true;
        }
    }

    private final Recent recent = new Recent(1000, 0);

    private Listener listener(Connection connection) {
        return new Listener(connection, new SseImpl(), recent, null, 0, NOON.plus(Duration.ofHours(1)));
    }

    private void happen(int count) {
        for (int i = 0; i < count; i++) {
            long place = recent.newest() + 1;
            recent.add(new Happening(place, "tarn-hollow", "e" + place));
        }
    }

    @Test
    void aQuickReaderGetsAllInOrder() {
        var connection = new Connection(false);
        var listener = listener(connection);
        happen(3);
        listener.wake();
        happen(2);
        listener.wake();

        assertThat(connection.data()).containsExactly("e1", "e2", "e3", "e4", "e5");
    }

    @Test
    void aSlowReaderHasOneWriteOutstandingHoweverMuchHappens() {
        var connection = new Connection(true);
        var listener = listener(connection);
        happen(1);
        listener.wake();
        for (int i = 0; i < 300; i++) {
            happen(1);
            listener.wake();
        }

        assertThat(connection.given).hasSize(1);
        connection.outstanding.complete(null);
        assertThat(connection.data()).containsExactly("e1", "e2");
    }

    @Test
    void aReaderFarBehindIsToldToLookAnewAndThenGoesOn() {
        var connection = new Connection(true);
        var listener = listener(connection);
        happen(1);
        listener.wake();
        happen(600);
        connection.outstanding.complete(null);
        assertThat(connection.data()).containsExactly("e1", "{\"kind\":\"resync\"}");
        assertThat(connection.given.get(1).getId()).isEqualTo("601");
        happen(1);
        listener.wake();
        connection.outstanding.complete(null);

        assertThat(connection.data()).last().isEqualTo("e602");
    }

    @Test
    void aReaderWhoseLastEventIsNoLongerOnRecordIsToldToLookAnew() {
        happen(1500);
        var connection = new Connection(false);
        new Listener(connection, new SseImpl(), recent, null, 10, NOON.plusSeconds(1)).wake();

        assertThat(connection.data()).containsExactly("{\"kind\":\"resync\"}");
    }

    @Test
    void aReaderWhoTakesNothingForTooLongIsLetGo() {
        var connection = new Connection(true);
        var listener = listener(connection);
        happen(1);
        listener.wake();

        assertThat(listener.beat(NOON, MINUTE)).isTrue();
        assertThat(listener.beat(NOON.plus(MINUTE), MINUTE)).isTrue();
        assertThat(listener.beat(NOON.plus(MINUTE).plusSeconds(1), MINUTE)).isFalse();
        assertThat(connection.isClosed()).isTrue();
    }

    @Test
    void aReaderWhoTakesSomethingNowAndThenStays() {
        var connection = new Connection(true);
        var listener = listener(connection);
        for (int minute = 0; minute < 10; minute++) {
            happen(1);
            listener.wake();
            assertThat(listener.beat(NOON.plus(MINUTE.multipliedBy(minute)), MINUTE))
                    .isTrue();
            connection.outstanding.complete(null);
            connection.outstanding.complete(null);
        }
    }

    @Test
    void aSignOfLifeCarriesThePlaceSoThatOneWhoHeardNothingCanComeBack() {
        happen(7);
        var connection = new Connection(false);
        var elsewhere = new Listener(connection, new SseImpl(), recent, "cinder-flats", 0, NOON.plusSeconds(60));
        elsewhere.wake();
        elsewhere.beat(NOON, MINUTE);

        assertThat(connection.data()).isEmpty();
        assertThat(connection.given).last().satisfies(event -> {
            assertThat(event.getId()).isEqualTo("7");
            assertThat(event.getComment()).isNotEmpty();
        });
    }

    @Test
    void aConnectionEndsWhenItsTimeIsOver() {
        var connection = new Connection(false);
        var listener = listener(connection);

        assertThat(listener.beat(NOON.plus(Duration.ofHours(1)).plusSeconds(1), MINUTE))
                .isFalse();
        assertThat(connection.isClosed()).isTrue();
    }
}
