package dev.lapwing.people;

import dev.lapwing.platform.Refused;
import dev.lapwing.web.FieldMessages;
import dev.lapwing.web.FoundingDepots;
import dev.lapwing.web.Pages;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.Blocking;
import jakarta.annotation.security.PermitAll;
import jakarta.inject.Inject;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import org.jboss.resteasy.reactive.RestForm;
import org.jboss.resteasy.reactive.RestPath;

/** The page of a first start: who runs the due list, and where. */
@Path("/set-up/{token}")
@PermitAll
@Blocking
class SetUpPage {
    @CheckedTemplate(basePath = "people")
    static class Templates {
        static native TemplateInstance setUp(
                String token, SettingUp.Person person, FoundingDepots.NewDepot depot, FieldMessages wrong);

        static native TemplateInstance setUpDone(String username);
    }

    @Inject
    SettingUp settingUp;

    @Inject
    Pages pages;

    @GET
    public Response form(@RestPath String token) {
        settingUp.require(token);
        return pages.show(Templates.setUp(
                token,
                new SettingUp.Person("", "", "", ""),
                new FoundingDepots.NewDepot("", "", "", "04-01", "10-31"),
                FieldMessages.NONE));
    }

    @POST
    public Response setUp(
            @RestPath String token,
            @RestForm String fullName,
            @RestForm String username,
            @RestForm String mail,
            @RestForm String password,
            @RestForm String code,
            @RestForm String name,
            @RestForm String zone,
            @RestForm String opens,
            @RestForm String closes) {
        var person = new SettingUp.Person(fullName, username, mail, password);
        var depot = new FoundingDepots.NewDepot(code, name, zone, opens, closes);
        try {
            settingUp.setUp(token, person, depot);
        } catch (Refused refused) {
            if (refused.kind() != Refused.Kind.INVALID) {
                throw refused;
            }
            return pages.show(400, Templates.setUp(token, person, depot, FieldMessages.of(refused)));
        }
        return pages.show(Templates.setUpDone(person.username().strip()));
    }
}
