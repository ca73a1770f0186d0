package dev.lapwing.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.common.http.TestHTTPResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Nothing of the service answers a stranger, but for the ways in. The list of paths is the service's own. */
@QuarkusTest
class EveryPathDemandsARoleTest {
    private static final Set<String> METHODS = Set.of("get", "post", "put", "delete");

    /** The ways in, each guarded by a password or a secret link, and what a browser needs to show them. */
    private static final Set<String> WAYS_IN = Set.of(
            "GET /sign-in",
            "POST /sign-in",
            "POST /sign-out",
            "GET /job/{token}",
            "GET /set-up/{token}",
            "POST /set-up/{token}",
            "GET /api/calendar/{file}");

    /** One operation of the service, with the media type of its body if it takes one. */
    private record Operation(String method, String path, String bodyType) {
        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    /** Follows no redirect. */
    private final HttpClient stranger = HttpClient.newHttpClient();

    @TestHTTPResource("/")
    URI root;

    @Test
    void aStrangerIsSentToTheSignIn() throws IOException, InterruptedException {
        List<Operation> operations = operations();
        assertThat(operations).hasSizeGreaterThan(40);
        for (Operation operation : operations) {
            if (!WAYS_IN.contains(operation.toString())) {
                assertThat(statusForAStranger(operation))
                        .as(operation.toString())
                        .isIn(401, 303);
            }
        }
    }

    private int statusForAStranger(Operation operation) throws IOException, InterruptedException {
        String path = operation.path().replaceAll("\\{[^}]*}", "1").substring(1);
        HttpRequest.Builder request = HttpRequest.newBuilder(root.resolve(path))
                .header("Accept", "text/html, */*")
                .method(operation.method(), HttpRequest.BodyPublishers.ofString("{}"));
        if (!operation.bodyType().isEmpty()) {
            request.header("Content-Type", operation.bodyType());
        }
        return stranger.send(request.build(), HttpResponse.BodyHandlers.discarding())
                .statusCode();
    }

    private static List<Operation> operations() throws IOException {
        JsonNode description = new ObjectMapper()
                .readTree(given().queryParam("format", "JSON")
                        .get("/q/openapi")
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString());
        List<Operation> operations = new ArrayList<>();
        for (var path : description.path("paths").properties()) {
            for (var operation : path.getValue().properties()) {
                if (METHODS.contains(operation.getKey())) {
                    var types = operation
                            .getValue()
                            .path("requestBody")
                            .path("content")
                            .fieldNames();
                    operations.add(new Operation(
                            operation.getKey().toUpperCase(Locale.ROOT),
                            path.getKey(),
                            types.hasNext() ? types.next() : ""));
                }
            }
        }
        return operations;
    }
}
