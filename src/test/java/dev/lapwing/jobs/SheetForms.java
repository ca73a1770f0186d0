package dev.lapwing.jobs;

import static dev.lapwing.jobs.SheetDriver.as;

import io.restassured.http.ContentType;
import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.function.Supplier;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** The forms of one sheet, sent as a browser without scripts sends them. */
final class SheetForms {
    private static final Pattern CAUTION = Pattern.compile("name=\"read\" value=\"([^\"]+)\"");
    private final String path;
    private final Supplier<RequestSpecification> person;

    SheetForms(String task, String username) {
        this(task, () -> as(username));
    }

    SheetForms(String task, Supplier<RequestSpecification> person) {
        path = "/tasks/" + task + "/sheet";
        this.person = person;
    }

    String path() {
        return path;
    }

    Response get() {
        return person.get().accept(ContentType.HTML).redirects().follow(false).get(path);
    }

    Response readCautions() {
        List<String> cautions = CAUTION.matcher(get().asString())
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList();
        return form().formParam("key", UUID.randomUUID().toString())
                .formParam("read", cautions)
                .post(path + "/cautions");
    }

    Response start(String weather) {
        return post("start", "weather", weather);
    }

    Response sign(int seen) {
        return post(
                "sign-off",
                Map.of("dry", "yes", "by", "Tess Alder", "statement", "All seams felt", "seen", String.valueOf(seen)));
    }

    Response post(String act, String name, String value) {
        return post(act, Map.of(name, value));
    }

    /** Sends a form under a key of its own unless one is given. */
    Response post(String act, Map<String, String> fields) {
        RequestSpecification form = form();
        if (!fields.containsKey("key")) {
            form.formParam("key", UUID.randomUUID().toString());
        }
        return form.formParams(fields).post(path + "/" + act);
    }

    /** Sends a form as the script of the page does. */
    JsonPath script(String act, String key, Map<String, String> fields) {
        return form().accept(ContentType.JSON)
                .header("Idempotency-Key", key)
                .formParams(fields)
                .post(path + "/" + act)
                .then()
                .statusCode(200)
                .extract()
                .jsonPath();
    }

    private RequestSpecification form() {
        return person.get()
                .accept(ContentType.HTML)
                .contentType("application/x-www-form-urlencoded")
                .redirects()
                .follow(false);
    }
}
