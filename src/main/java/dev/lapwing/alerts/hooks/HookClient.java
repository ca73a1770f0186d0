package dev.lapwing.alerts.hooks;

import dev.lapwing.alerts.domain.Failure;
import dev.lapwing.alerts.domain.HookAddress;
import dev.lapwing.alerts.domain.HookSignature;
import dev.lapwing.alerts.domain.PlainText;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.URI;
import java.net.UnknownHostException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/** Makes one attempt at a delivery. Redirects are not followed: they could lead where no target may lie. */
@ApplicationScoped
class HookClient {
    private static final int LONGEST_ERROR = 2000;
    private static final int GONE = 410;

    /**
     * What came of an attempt.
     *
     * @param status of the answer, or null when none came
     * @param failure null when it was taken
     * @param why null when it was taken
     */
    record Answer(Integer status, Failure failure, String why, long millis) {}

    private final HookSettings settings;
    private final HttpClient client;

    @Inject
    HookClient(HookSettings settings) {
        this.settings = settings;
        client = HttpClient.newBuilder()
                .version(HttpClient.Version.HTTP_1_1)
                .followRedirects(HttpClient.Redirect.NEVER)
                .connectTimeout(settings.timeout())
                .build();
    }

    /** Returns why an address is not called, by what its name resolves to now; empty when it may be. */
    Optional<String> forbidden(String address) {
        URI uri = URI.create(address);
        try {
            List<InetAddress> leadsTo = List.of(InetAddress.getAllByName(uri.getHost()));
            return HookAddress.forbidden(uri, leadsTo, settings.allowPrivate());
        } catch (UnknownHostException e) {
            return Optional.of("has a host that cannot be found");
        }
    }

    Answer send(WebhookTarget target, WebhookDelivery delivery, Instant now) {
        long begun = System.nanoTime();
        Optional<String> forbidden = forbidden(target.address);
        if (forbidden.isPresent()) {
            return new Answer(null, Failure.PASSING, "the address " + forbidden.get(), since(begun));
        }
        try {
            HttpResponse<InputStream> answer =
                    client.send(request(target, delivery, now), HttpResponse.BodyHandlers.ofInputStream());
            answer.body().close();
            return judged(answer.statusCode(), since(begun));
        } catch (IOException e) {
            return new Answer(null, Failure.PASSING, PlainText.oneLine(words(e), LONGEST_ERROR), since(begun));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return new Answer(null, Failure.PASSING, "the service was stopped meanwhile", since(begun));
        }
    }

    private HttpRequest request(WebhookTarget target, WebhookDelivery delivery, Instant now) {
        long timestamp = now.getEpochSecond();
        return HttpRequest.newBuilder(URI.create(target.address))
                .timeout(settings.timeout())
                .header("Content-Type", "application/json")
                .header("User-Agent", "Lapwing")
                .header("Lapwing-Event", delivery.kind.word())
                .header("Lapwing-Delivery", delivery.id.toString())
                .header("Lapwing-Timestamp", Long.toString(timestamp))
                .header("Lapwing-Signature", HookSignature.of(target.secret, timestamp, delivery.body))
                .POST(HttpRequest.BodyPublishers.ofString(delivery.body))
                .build();
    }

    private static Answer judged(int status, long millis) {
        if (status >= 200 && status < 300) {
            return new Answer(status, null, null, millis);
        }
        if (status >= 300 && status < 400) {
            return new Answer(status, Failure.PASSING, "it redirects, which is not followed", millis);
        }
        Failure failure = status == GONE ? Failure.PERMANENT : Failure.PASSING;
        return new Answer(status, failure, "it answered " + status, millis);
    }

    private static String words(IOException e) {
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static long since(long begun) {
        return TimeUnit.NANOSECONDS.toMillis(System.nanoTime() - begun);
    }
}
