package dev.lapwing.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.Method;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
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
            "GET /set-up/{token}",
            "POST /set-up/{token}",
            "GET /api/calendar/{file}");

    /** One operation of the service, with the media type of its body if it takes one. */
    private record Operation(Method method, String path, String bodyType) {
        @Override
        public String toString() {
            return method + " " + path;
        }
    }

    @Test
    void aStrangerIsSentToTheSignIn() throws IOException {
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

    private static int statusForAStranger(Operation operation) {
        RequestSpecification request = given().redirects().follow(false).header("Accept", "text/html, */*");
        if (operation.bodyType().startsWith("multipart/")) {
            request.multiPart("file", "rows.csv", "number");
        } else if (!operation.bodyType().isEmpty()) {
            request.contentType(operation.bodyType()).body("{}");
        }
        return request.request(operation.method(), operation.path().replaceAll("\\{[^}]*}", "1"))
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
                            Method.valueOf(operation.getKey().toUpperCase(Locale.ROOT)),
                            path.getKey(),
                            types.hasNext() ? types.next() : ""));
                }
            }
        }
        return operations;
    }
}
