package dev.lapwing.web;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.http.Method;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Nothing of the service answers a stranger, but for the ways in. The list of paths is the service's own. */
@QuarkusTest
class EveryPathDemandsARoleTest {
    /** The ways in, each guarded by a password or a secret link, and what a browser needs to show them. */
    private static final Set<String> WAYS_IN = Set.of(
            "GET /sign-in",
            "POST /sign-in",
            "POST /sign-out",
            "GET /set-up/{token}",
            "POST /set-up/{token}",
            "GET /api/calendar/{token}.ics");

    @Test
    void aStrangerIsSentToTheSignIn() throws IOException {
        List<String> operations = operations();
        List<String> open = new ArrayList<>();
        for (String operation : operations) {
            String[] parts = operation.split(" ", 2);
            int status = given().redirects()
                    .follow(false)
                    .header("Accept", "text/html")
                    .request(Method.valueOf(parts[0]), parts[1].replaceAll("\\{[^}]*}", "1"))
                    .statusCode();
            if (status != 401 && status != 303) {
                open.add(operation + " answers " + status);
            }
        }
        assertThat(operations).hasSizeGreaterThan(25);
        assertThat(open).allMatch(operation -> WAYS_IN.contains(operation.replaceAll(" answers .*", "")));
    }

    private static List<String> operations() throws IOException {
        JsonNode description = new ObjectMapper()
                .readTree(given().queryParam("format", "JSON")
                        .get("/q/openapi")
                        .then()
                        .statusCode(200)
                        .extract()
                        .asString());
        List<String> operations = new ArrayList<>();
        description
                .path("paths")
                .fields()
                .forEachRemaining(path -> path.getValue().fieldNames().forEachRemaining(method -> {
                    if (Set.of("get", "post", "put", "delete").contains(method)) {
                        operations.add(method.toUpperCase(Locale.ROOT) + " " + path.getKey());
                    }
                }));
        return operations;
    }
}
