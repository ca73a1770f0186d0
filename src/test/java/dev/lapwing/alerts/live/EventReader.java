package dev.lapwing.alerts.live;

import dev.lapwing.platform.FleetFixture;
import io.restassured.path.json.JsonPath;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;

/** Listens as a program does that knows nothing but the format of server-sent events. */
final class EventReader implements AutoCloseable {
    /** One event as it came. */
    record Heard(String id, String data) {
        String kind() {
            return JsonPath.from(data).getString("kind");
        }

        String unit() {
            return JsonPath.from(data).getString("unit");
        }

        String task() {
            return JsonPath.from(data).getString("task");
        }
    }

    private final List<Heard> heard = new CopyOnWriteArrayList<>();
    private final HttpResponse<java.io.InputStream> answer;
    private volatile String lastId;

    EventReader(URI root, String query, Map<String, String> headers) throws IOException, InterruptedException {
        String who = Base64.getEncoder()
                .encodeToString(("coordinator:" + FleetFixture.PASSWORD).getBytes(StandardCharsets.UTF_8));
        HttpRequest.Builder request =
                HttpRequest.newBuilder(root.resolve("api/live" + query)).header("Authorization", "Basic " + who);
        headers.forEach(request::header);
        answer = HttpClient.newHttpClient().send(request.build(), HttpResponse.BodyHandlers.ofInputStream());
        if (answer.statusCode() == 200) {
            var thread = new Thread(this::read, "event-reader");
            thread.setDaemon(true);
            thread.start();
        }
    }

    int status() {
        return answer.statusCode();
    }

    String contentType() {
        return answer.headers().firstValue("Content-Type").orElse("");
    }

    /** The id to come back with. */
    String lastId() {
        return lastId;
    }

    List<Heard> of(String unit) {
        return heard.stream().filter(one -> unit.equals(one.unit())).toList();
    }

    List<Heard> all() {
        return new ArrayList<>(heard);
    }

    private void read() {
        try (var lines = new BufferedReader(new InputStreamReader(answer.body(), StandardCharsets.UTF_8))) {
            String data = null;
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (line.startsWith("id:")) {
                    lastId = line.substring(3).strip();
                } else if (line.startsWith("data:")) {
                    data = line.substring(5).strip();
                } else if (line.isEmpty() && data != null) {
                    heard.add(new Heard(lastId, data));
                    data = null;
                }
            }
        } catch (IOException closed) {
            lastId = lastId == null ? "" : lastId;
        }
    }

    @Override
    public void close() throws IOException {
        answer.body().close();
    }
}
