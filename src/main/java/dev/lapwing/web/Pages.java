package dev.lapwing.web;

import io.quarkus.qute.TemplateInstance;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import java.util.Locale;

/** Answers with pages, and sends browsers on. Pages are rendered before the method returns, on its own thread. */
@ApplicationScoped
public class Pages {
    private static final int FLASH_SECONDS = 60;
    private static final String HTML = MediaType.TEXT_HTML + ";charset=UTF-8";

    @Inject
    Shell shell;

    @Inject
    RoutingContext request;

    public Response show(TemplateInstance page) {
        return show(200, page);
    }

    public Response show(int status, TemplateInstance page) {
        String html = page.setLocale(Locale.ENGLISH).render();
        var answer = Response.status(status).type(HTML).entity(html);
        if (shell.flashTaken()) {
            answer.cookie(OwnCookie.lasting(Flash.COOKIE, "", 0, secure()));
        }
        return answer.build();
    }

    /** Sends the browser to a path of this service. */
    public Response go(String path) {
        return Response.seeOther(URI.create(path)).build();
    }

    /** Sends the browser on; the next page says what was done. */
    public Response go(String path, String done) {
        return with(new Flash(false, done), path);
    }

    /** Sends the browser on; the next page says what was not done and why. */
    public Response goRefused(String path, String why) {
        return with(new Flash(true, why), path);
    }

    private Response with(Flash flash, String path) {
        return Response.seeOther(URI.create(path))
                .cookie(OwnCookie.lasting(Flash.COOKIE, flash.encoded(), FLASH_SECONDS, secure()))
                .build();
    }

    private boolean secure() {
        return request.request().isSSL();
    }
}
