package dev.lapwing.alerts.rain;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Optional;

/** Fetches what a feed says of a depot. */
@ApplicationScoped
class RainFeed {
    private static final int MOST_BYTES = 2_000_000;

    /**
     * What came back.
     *
     * @param text the forecast, or null when it has not changed since
     * @param lastModified as the feed wrote it, or null
     * @param freshUntil when it is worth asking again, or null when the feed does not say
     */
    record Answer(String text, String lastModified, Instant freshUntil) {}

    @Inject
    RainSettings settings;

    /** Returns the address of a depot's forecast, or empty when no feed is set or it needs a place that is not. */
    Optional<String> addressOf(String depotCode) {
        return settings.feed().map(feed -> feed.replace("{depot}", depotCode)).flatMap(feed -> placed(feed, depotCode));
    }

    private Optional<String> placed(String feed, String depotCode) {
        if (!feed.contains("{latitude}") && !feed.contains("{longitude}")) {
            return Optional.of(feed);
        }
        RainSettings.Place place = settings.depot().get(depotCode);
        if (place == null || place.latitude().isEmpty() || place.longitude().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(feed.replace("{latitude}", degrees(place.latitude().get()))
                .replace("{longitude}", degrees(place.longitude().get())));
    }

    /** Public feeds ask for no more than four decimals, so that their caches are of use. */
    private static String degrees(double value) {
        return String.format(Locale.ROOT, "%.4f", value);
    }

    /**
     * Fetches a forecast.
     *
     * @param lastModified what the feed said last, or null
     * @throws IOException saying what went wrong
     */
    Answer fetch(String address, String lastModified) throws IOException {
        return address.startsWith("http://") || address.startsWith("https://")
                ? overHttp(URI.create(address), lastModified)
                : new Answer(fromFile(Path.of(address)), null, null);
    }

    private static String fromFile(Path file) throws IOException {
        if (Files.size(file) > MOST_BYTES) {
            throw new IOException(file + " is longer than " + MOST_BYTES + " bytes");
        }
        return Files.readString(file);
    }

    private Answer overHttp(URI address, String lastModified) throws IOException {
        HttpRequest.Builder request = HttpRequest.newBuilder(address)
                .timeout(settings.timeout())
                .header("User-Agent", settings.userAgent())
                .header("Accept", "application/json");
        if (lastModified != null) {
            request.header("If-Modified-Since", lastModified);
        }
        HttpClient client = HttpClient.newBuilder()
                .connectTimeout(settings.timeout())
                .followRedirects(HttpClient.Redirect.NORMAL)
                .build();
        HttpResponse<InputStream> answer;
        try {
            answer = client.send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while asking " + address.getHost(), e);
        }
        try (InputStream body = answer.body()) {
            String modified = answer.headers().firstValue("Last-Modified").orElse(lastModified);
            Instant fresh =
                    answer.headers().firstValue("Expires").map(RainFeed::time).orElse(null);
            return switch (answer.statusCode()) {
                case 200, 203 -> new Answer(text(body), modified, fresh);
                case 304 -> new Answer(null, modified, fresh);
                default -> throw new IOException(address.getHost() + " answered " + answer.statusCode());
            };
        }
    }

    private static String text(InputStream body) throws IOException {
        byte[] read = body.readNBytes(MOST_BYTES + 1);
        if (read.length > MOST_BYTES) {
            throw new IOException("the answer is longer than " + MOST_BYTES + " bytes");
        }
        return new String(read, StandardCharsets.UTF_8);
    }

    /** Returns null for a date that cannot be read: a feed may say "0" for "at once". */
    private static Instant time(String header) {
        try {
            return ZonedDateTime.parse(header, DateTimeFormatter.RFC_1123_DATE_TIME)
                    .toInstant();
        } catch (DateTimeException notATime) {
            return null;
        }
    }
}
