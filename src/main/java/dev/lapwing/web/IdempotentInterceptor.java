package dev.lapwing.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Secrets;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.inject.Inject;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

@Idempotent
@Interceptor
@Priority(Interceptor.Priority.APPLICATION)
class IdempotentInterceptor {
    private static final String HEADER = "Idempotency-Key";
    private static final int LONGEST_KEY = 200;

    @Inject
    RoutingContext request;

    @Inject
    SecurityIdentity identity;

    @Inject
    Repeats repeats;

    @Inject
    ObjectMapper json;

    @AroundInvoke
    Object once(InvocationContext call) {
        String key = request.request().getHeader(HEADER);
        return QuarkusTransaction.joiningExisting()
                .call(() -> key == null ? call.proceed() : answer(key.strip(), call));
    }

    private Response answer(String key, InvocationContext call) throws Exception {
        var errors = new FieldErrors();
        if (errors.present(key, HEADER)) {
            errors.atMost(key, LONGEST_KEY, HEADER);
        }
        errors.refuseIfAny();
        String fingerprint = Secrets.hash(call.getMethod() + json.writeValueAsString(call.getParameters()));
        Response[] first = new Response[1];
        var kept = repeats.once(identity.getPrincipal().getName(), key, fingerprint, () -> {
            first[0] = proceed(call);
            return new Repeats.Kept(first[0].getStatus(), written(first[0].getEntity()));
        });
        return first[0] != null ? first[0] : again(kept);
    }

    private static Response proceed(InvocationContext call) {
        try {
            return (Response) call.proceed();
        } catch (RuntimeException e) {
            throw e;
        } catch (Exception e) {
            throw new IllegalStateException("a resource method threw a checked exception", e);
        }
    }

    private String written(Object entity) {
        try {
            return json.writeValueAsString(entity);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("an answer cannot be written as JSON", e);
        }
    }

    private static Response again(Repeats.Kept kept) {
        return Response.status(kept.status())
                .type(MediaType.APPLICATION_JSON_TYPE)
                .entity(kept.body())
                .build();
    }
}
