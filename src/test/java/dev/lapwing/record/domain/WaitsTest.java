package dev.lapwing.record.domain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.Duration;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Quantiles by nearest rank; the first example is the usual one of five values (from memory, no source read). */
class WaitsTest {
    private static Waits hours(int... hours) {
        return new Waits(IntStream.of(hours).mapToObj(Duration::ofHours).toList());
    }

    @Test
    void theQuantileIsTheCaseThatTheShareDoesNotExceed() {
        Waits waits = hours(50, 15, 40, 20, 35);

        assertThat(waits.quantile(0.3)).isEqualTo(Duration.ofHours(20));
        assertThat(waits.quantile(0.4)).isEqualTo(Duration.ofHours(20));
        assertThat(waits.quantile(0.5)).isEqualTo(Duration.ofHours(35));
        assertThat(waits.quantile(1)).isEqualTo(Duration.ofHours(50));
    }

    @Test
    void withoutACaseThereIsNoQuantile() {
        assertThat(new Waits(List.of()).quantile(0.5)).isNull();
    }

    @Test
    void aShareIsAboveNoneAndUpToAll() {
        assertThatThrownBy(() -> hours(1).quantile(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> hours(1).quantile(1.1)).isInstanceOf(IllegalArgumentException.class);
    }
}
