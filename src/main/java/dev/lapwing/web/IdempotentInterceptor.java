package dev.lapwing.web;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.lapwing.platform.FieldErrors;
import dev.lapwing.platform.Refused;
import dev.lapwing.platform.Secrets;
import io.quarkus.narayana.jta.QuarkusTransaction;
import io.quarkus.security.identity.SecurityIdentity;
import io.vertx.ext.web.RoutingContext;
import jakarta.annotation.Priority;
import jakarta.inject.Inject;
import jakarta.interceptor.AroundInvoke;
import jakarta.interceptor.Interceptor;
import jakarta.interceptor.InvocationContext;
import jakarta.persistence.EntityManager;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.Clock;
import java.time.Instant;

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
    EntityManager database;

    @Inject
    ObjectMapper json;

    @Inject
    Clock clock;

    @AroundInvoke
    Object once(InvocationContext call) {
        String key = request.request().getHeader(HEADER);
        return QuarkusTransaction.joiningExisting()
                .call(() -> key == null ? call.proceed() : answer(key.strip(), call));
    }

    private Object answer(String key, InvocationContext call) throws Exception {
        var errors = new FieldErrors();
        if (errors.present(key, HEADER)) {
            errors.atMost(key, LONGEST_KEY, HEADER);
        }
        errors.refuseIfAny();
        String actor = identity.getPrincipal().getName();
        String fingerprint = fingerprint(call);
        if (!claim(actor, key, fingerprint)) {
            return earlierAnswer(actor, key, fingerprint);
        }
        Response answer = (Response) call.proceed();
        remember(actor, key, answer);
        return answer;
    }

    private String fingerprint(InvocationContext call) throws JsonProcessingException {
        return Secrets.hash(call.getMethod() + json.writeValueAsString(call.getParameters()));
    }

    /** Returns false when the key is taken; waits for a request that holds it and has not ended. */
    private boolean claim(String actor, String key, String fingerprint) {
        return database.createNativeQuery("""
                insert into idempotent_answer (actor, idempotency_key, fingerprint, created_at)
                values (:actor, :key, :fingerprint, :now) on conflict do nothing
                """)
                        .setParameter("actor", actor)
                        .setParameter("key", key)
                        .setParameter("fingerprint", fingerprint)
                        .setParameter("now", Instant.now(clock))
                        .executeUpdate()
                == 1;
    }

    private Response earlierAnswer(String actor, String key, String fingerprint) {
        Object[] row = (Object[]) database.createNativeQuery("""
                select fingerprint, status, body from idempotent_answer
                where actor = :actor and idempotency_key = :key
                """, Object[].class)
                .setParameter("actor", actor)
                .setParameter("key", key)
                .getSingleResult();
        if (!fingerprint.equals(row[0])) {
            throw Refused.keyReused();
        }
        return Response.status(((Number) row[1]).intValue())
                .type(MediaType.APPLICATION_JSON_TYPE)
                .entity(row[2])
                .build();
    }

    private void remember(String actor, String key, Response answer) throws JsonProcessingException {
        database.createNativeQuery("""
                update idempotent_answer set status = :status, body = :body
                where actor = :actor and idempotency_key = :key
                """)
                .setParameter("status", answer.getStatus())
                .setParameter("body", json.writeValueAsString(answer.getEntity()))
                .setParameter("actor", actor)
                .setParameter("key", key)
                .executeUpdate();
    }
}
