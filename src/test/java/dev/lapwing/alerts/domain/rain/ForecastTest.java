package dev.lapwing.alerts.domain.rain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ForecastTest {
    private static final Instant NINE = Instant.parse("2026-11-25T09:00:00Z");
    private static final Forecast.Likely LIKELY = new Forecast.Likely(0.5, 0.2);

    /**
     * The file follows the public JSON schema of the locationforecast 2.0 API (type Feature, properties.meta.updated_at,
     * properties.timeseries[].data.next_1_hours and next_6_hours, details.precipitation_amount); its values are invented.
     */
    @Test
    void aPublicForecastIsReadByTheHour() throws IOException {
        Forecast forecast = ForecastFormat.LOCATIONFORECAST.read(sample());

        assertThat(forecast.issued()).isEqualTo(Instant.parse("2026-11-25T08:40:12Z"));
        assertThat(forecast.spells())
                .containsExactly(
                        new Forecast.Spell(NINE, Duration.ofHours(1), null, 0.0),
                        new Forecast.Spell(hour(1), Duration.ofHours(1), null, 0.1),
                        new Forecast.Spell(hour(2), Duration.ofHours(1), null, 0.6),
                        new Forecast.Spell(hour(3), Duration.ofHours(6), null, 6.0));
        assertThat(forecast.reaches()).isEqualTo(hour(9));
        assertThat(forecast.rainAt(NINE, LIKELY)).contains(hour(2));
    }

    @Test
    void ourOwnFormatTellsChanceOrAmount() {
        Forecast forecast = ForecastFormat.OWN.read("""
                {"issued": "2026-11-25T08:00:00Z", "spells": [
                  {"from": "2026-11-25T10:00:00+01:00", "hours": 1, "chance": 0.49},
                  {"from": "2026-11-25T11:00:00+01:00", "hours": 0.5, "chance": 0.1, "millimetres": 0.1},
                  {"from": "2026-11-25T11:30:00+01:00", "hours": 3, "chance": 0.5}]}
                """);

        // 0.1 mm in half an hour is 0.2 mm an hour: likely.
        assertThat(forecast.rainAt(NINE, LIKELY)).contains(hour(1));
        assertThat(forecast.rainAt(hour(1).plusSeconds(1800), LIKELY)).contains(hour(1).plusSeconds(1800));
        assertThat(forecast.rainAt(hour(3), LIKELY)).contains(hour(3));
        assertThat(forecast.rainAt(hour(5), LIKELY)).isEmpty();
    }

    @Test
    void rainThatHasBegunIsNow() {
        var forecast = new Forecast(NINE, List.of(new Forecast.Spell(NINE, Duration.ofHours(2), 0.9, null)));

        assertThat(forecast.rainAt(hour(1), LIKELY)).contains(hour(1));
        assertThat(forecast.rainAt(hour(2), LIKELY)).isEmpty();
    }

    @Test
    void spellsOutOfOrderArePutInOrder() {
        var late = new Forecast.Spell(hour(5), Duration.ofHours(1), 0.9, null);
        var early = new Forecast.Spell(hour(2), Duration.ofHours(1), 0.9, null);

        assertThat(new Forecast(NINE, List.of(late, early)).rainAt(NINE, LIKELY))
                .contains(hour(2));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "rain at five",
                "[]",
                "{}",
                "{\"issued\": \"2026-11-25T08:00:00Z\"}",
                "{\"issued\": \"2026-11-25T08:00:00Z\", \"spells\": []}",
                "{\"issued\": \"2026-11-25T08:00:00Z\", \"spells\": [{\"hours\": 1}]}",
                "{\"issued\": \"2026-11-25T08:00:00\", \"spells\": [{\"from\": \"2026-11-25T08:00:00Z\", \"hours\": 1}]}",
                "{\"issued\": \"2026-11-25T08:00:00Z\", \"spells\": [{\"from\": \"2026-11-25T08:00:00Z\", \"hours\": -1}]}",
                "{\"issued\": \"2026-11-25T08:00:00Z\", \"spells\": [{\"from\": \"2026-11-25T08:00:00Z\", \"hours\": 1, \"chance\": 1.1}]}",
                "{\"issued\": \"2026-11-25T08:00:00Z\", \"spells\": [{\"from\": \"2026-11-25T08:00:00Z\", \"hours\": 1, \"chance\": \"high\"}]}"
            })
    void whatIsNoForecastIsRefusedWithTheReason(String text) {
        assertThatThrownBy(() -> ForecastFormat.OWN.read(text))
                .isInstanceOf(BadForecast.class)
                .message()
                .isNotBlank();
        assertThatThrownBy(() -> ForecastFormat.LOCATIONFORECAST.read(text)).isInstanceOf(BadForecast.class);
    }

    private static String sample() throws IOException {
        try (InputStream file = ForecastTest.class.getResourceAsStream("/rain/locationforecast.json")) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static Instant hour(int after) {
        return NINE.plus(Duration.ofHours(after));
    }
}
