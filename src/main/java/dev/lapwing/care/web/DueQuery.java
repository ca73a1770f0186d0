package dev.lapwing.care.web;

import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.storage.DueList;
import dev.lapwing.platform.FieldErrors;
import jakarta.ws.rs.core.UriBuilder;
import org.jboss.resteasy.reactive.RestQuery;

/** What a person asked the due list for. All of it is in the URL, so that a view can be kept and sent. */
public class DueQuery {
    @RestQuery
    String depot;

    @RestQuery
    String kind;

    @RestQuery
    String assignee;

    @RestQuery
    String unit;

    @RestQuery
    String standing;

    @RestQuery
    String after;

    /** Takes the depot that the person works for when the URL names none; an empty one there means all. */
    void depotUnlessGiven(String usual) {
        depot = depot == null ? usual : depot;
    }

    DueList.Filter filter(FieldErrors errors) {
        return new DueList.Filter(
                given(depot),
                null,
                null,
                errors.word(TaskKind.class, kind, "kind").orElse(null),
                given(assignee),
                given(unit));
    }

    /** Returns the one standing asked for, or null for all. */
    Standing standing(FieldErrors errors) {
        return errors.word(Standing.class, standing, "standing").orElse(null);
    }

    DueList.Place place(FieldErrors errors) {
        return Cursors.read(after, errors);
    }

    public boolean filtered() {
        return given(kind) != null || given(assignee) != null || given(unit) != null;
    }

    /** Returns the address of this view with one standing, or with all when null. */
    String address(Standing one, String from) {
        var address = UriBuilder.fromPath("/due-list");
        add(address, "depot", depot == null ? "" : depot);
        add(address, "kind", given(kind));
        add(address, "assignee", given(assignee));
        add(address, "unit", given(unit));
        add(address, "standing", one == null ? null : one.word());
        add(address, "after", from);
        return address.build().toString();
    }

    public String depot() {
        return given(depot);
    }

    public String kind() {
        return given(kind);
    }

    public String assignee() {
        return given(assignee);
    }

    public String unit() {
        return given(unit);
    }

    public String standing() {
        return given(standing);
    }

    private static void add(UriBuilder address, String name, String value) {
        if (value != null) {
            address.queryParam(name, "{" + name + "}").resolveTemplate(name, value);
        }
    }

    private static String given(String text) {
        return text == null || text.isBlank() ? null : text.strip();
    }
}
