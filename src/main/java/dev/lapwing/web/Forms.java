package dev.lapwing.web;

import dev.lapwing.platform.Refused;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.Response;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Shows forms, and takes what was typed into them: a refused one comes back with what is wrong beside its fields. */
@ApplicationScoped
public class Forms {
    private static final int WRONG_INPUT = 400;
    private static final int CONFLICT = 409;

    @CheckedTemplate(basePath = "web")
    static class Templates {
        static native TemplateInstance form(
                Form form, Map<String, String> values, FieldMessages wrong, List<String> said);
    }

    @Inject
    Pages pages;

    /** Returns the fields of a form as sent; of several of one name the first counts. */
    public static Map<String, String> values(MultivaluedMap<String, String> sent) {
        Map<String, String> values = new HashMap<>();
        sent.forEach((name, all) -> values.put(name, all.get(0)));
        return values;
    }

    /** Shows a form with these values in it. */
    public Response show(Form form, Map<String, String> values) {
        return pages.show(Templates.form(form, values, FieldMessages.NONE, List.of()));
    }

    /**
     * Does what a form asks for and sends the browser back, where the next page says what was done.
     *
     * @param act does it and returns what to say
     */
    public Response take(Form form, Map<String, String> values, Function<Typed, String> act) {
        try {
            return pages.go(form.back(), act.apply(new Typed(values)));
        } catch (Refused refused) {
            return switch (refused.kind()) {
                case INVALID -> again(WRONG_INPUT, form, values, refused);
                case CONFLICT -> again(CONFLICT, form, values, refused);
                default -> throw refused;
            };
        }
    }

    private Response again(int status, Form form, Map<String, String> values, Refused refused) {
        FieldMessages wrong = FieldMessages.of(refused);
        List<String> said = wrong.none() ? List.of(refused.getMessage()) : form.lines(wrong);
        return pages.show(status, Templates.form(form, values, wrong, said));
    }
}
