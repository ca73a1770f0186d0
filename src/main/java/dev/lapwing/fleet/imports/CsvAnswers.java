package dev.lapwing.fleet.imports;

import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.StreamingOutput;

/** Answers with a CSV file that is written while it is sent. */
public final class CsvAnswers {
    private CsvAnswers() {}

    public static Response file(String name, StreamingOutput content) {
        return Response.ok(content, "text/csv; charset=utf-8; header=present")
                .header(HttpHeaders.CONTENT_DISPOSITION, "attachment; filename=\"" + name + "\"")
                .build();
    }
}
