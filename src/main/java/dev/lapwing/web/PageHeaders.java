package dev.lapwing.web;

import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.MediaType;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Tells browsers what a page may load and who may frame it: only this service. Bootstrap's icons are data images. */
class PageHeaders {
    private static final String POLICY = "default-src 'self'; img-src 'self' data: blob:; object-src 'none';"
            + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    @ServerResponseFilter
    void add(ContainerResponseContext answer) {
        var headers = answer.getHeaders();
        headers.putSingle("X-Content-Type-Options", "nosniff");
        MediaType type = answer.getMediaType();
        if (type == null || !type.isCompatible(MediaType.TEXT_HTML_TYPE)) {
            return;
        }
        headers.putSingle("Content-Security-Policy", POLICY);
        headers.putSingle("Referrer-Policy", "same-origin");
        headers.putSingle("Cross-Origin-Opener-Policy", "same-origin");
        headers.putSingle("Cache-Control", "private, no-cache");
    }
}
