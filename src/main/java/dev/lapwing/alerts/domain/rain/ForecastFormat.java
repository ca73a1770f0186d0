package dev.lapwing.alerts.domain.rain;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;

/** How a forecast is written. Both are told in {@code docs/rain.md}. */
public enum ForecastFormat {
    /** Our own: {@code {issued, spells: [{from, hours, chance?, millimetres?}]}}. */
    OWN {
        @Override
        Forecast of(JsonNode root) {
            List<Forecast.Spell> spells = new ArrayList<>();
            for (JsonNode spell : list(root, "spells")) {
                double hours = number(spell, "hours", 0, 24 * 14);
                spells.add(new Forecast.Spell(
                        instant(spell, "from"),
                        Duration.ofSeconds(Math.max(1, Math.round(hours * 3600))),
                        spell.hasNonNull("chance") ? (Double) number(spell, "chance", 0, 1) : null,
                        spell.hasNonNull("millimetres") ? (Double) number(spell, "millimetres", 0, 2000) : null));
            }
            return new Forecast(instant(root, "issued"), spells);
        }
    },

    /**
     * The compact form of the locationforecast 2.0 API of MET Norway, as its public JSON schema has it: each entry of
     * {@code properties.timeseries} tells what falls in its next hour, or further ahead in its next six.
     */
    LOCATIONFORECAST {
        @Override
        Forecast of(JsonNode root) {
            JsonNode properties = root.path("properties");
            List<Forecast.Spell> spells = new ArrayList<>();
            for (JsonNode entry : list(properties, "timeseries")) {
                JsonNode data = entry.path("data");
                int hours = data.has("next_1_hours") ? 1 : 6;
                JsonNode details = data.path("next_" + hours + "_hours").path("details");
                if (details.hasNonNull("precipitation_amount")) {
                    spells.add(new Forecast.Spell(
                            instant(entry, "time"),
                            Duration.ofHours(hours),
                            details.hasNonNull("probability_of_precipitation")
                                    ? (Double) (number(details, "probability_of_precipitation", 0, 100) / 100)
                                    : null,
                            number(details, "precipitation_amount", 0, 2000)));
                }
            }
            return new Forecast(instant(properties.path("meta"), "updated_at"), spells);
        }
    };

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int MOST_SPELLS = 2000;

    /**
     * Reads a forecast.
     *
     * @throws BadForecast saying what is wrong
     */
    public Forecast read(String text) {
        try {
            return of(JSON.readTree(text));
        } catch (JsonProcessingException e) {
            throw new BadForecast("is no JSON: " + e.getOriginalMessage());
        }
    }

    abstract Forecast of(JsonNode root);

    private static Iterable<JsonNode> list(JsonNode parent, String field) {
        JsonNode list = parent.path(field);
        if (!list.isArray() || list.isEmpty()) {
            throw new BadForecast("has no list of " + field);
        }
        if (list.size() > MOST_SPELLS) {
            throw new BadForecast("has more than " + MOST_SPELLS + " " + field);
        }
        return list;
    }

    private static Instant instant(JsonNode parent, String field) {
        try {
            return OffsetDateTime.parse(parent.path(field).asText()).toInstant();
        } catch (DateTimeException e) {
            throw new BadForecast("has no time with offset in " + field + ": " + parent.path(field));
        }
    }

    private static double number(JsonNode parent, String field, double least, double most) {
        JsonNode value = parent.path(field);
        if (!value.isNumber() || !(value.doubleValue() >= least && value.doubleValue() <= most)) {
            throw new BadForecast("needs a number from " + least + " to " + most + " in " + field + ": " + value);
        }
        return value.doubleValue();
    }
}
