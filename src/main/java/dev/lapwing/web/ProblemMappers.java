package dev.lapwing.web;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import dev.lapwing.platform.FieldError;
import dev.lapwing.platform.Refused;
import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import jakarta.inject.Inject;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.Response;
import java.util.List;
import org.jboss.logging.Logger;
import org.jboss.resteasy.reactive.server.ServerExceptionMapper;

/** Turns what went wrong into an answer: a problem for programs, a page for people. */
class ProblemMappers {
    private static final Logger LOG = Logger.getLogger(ProblemMappers.class);

    @Inject
    ProblemAnswers answers;

    @ServerExceptionMapper
    Response refused(Refused refused) {
        int status =
                switch (refused.kind()) {
                    case INVALID -> 400;
                    case FORBIDDEN -> 403;
                    case NOT_FOUND -> 404;
                    case CONFLICT -> 409;
                    case TOO_LARGE -> 413;
                    case UNSUPPORTED -> 415;
                    case KEY_REUSED -> 422;
                    case BUSY -> 503;
                };
        return answers.answer(status, refused.getMessage(), refused.errors());
    }

    @ServerExceptionMapper
    Response mismatch(MismatchedInputException wrong) {
        return json(wrong);
    }

    @ServerExceptionMapper
    Response web(WebApplicationException wrong) {
        if (wrong.getCause() instanceof JacksonException json) {
            return json(json);
        }
        int status = wrong.getResponse().getStatus();
        if (status < 400) {
            return wrong.getResponse();
        }
        return answers.answer(status, Statuses.phrase(status), List.of());
    }

    @ServerExceptionMapper
    Response unauthorized(UnauthorizedException missing) {
        return answers.signIn("Sign in to do this");
    }

    @ServerExceptionMapper
    Response unauthorized(AuthenticationFailedException wrong) {
        return answers.signIn("The sign-in was not accepted");
    }

    @ServerExceptionMapper
    Response forbidden(ForbiddenException refused) {
        return answers.answer(403, "Your role does not allow this", List.of());
    }

    @ServerExceptionMapper
    Response unexpected(Throwable failure) {
        LOG.error("A request failed unexpectedly", failure);
        return answers.answer(500, "Something went wrong on our side; it was logged", List.of());
    }

    private Response json(JacksonException wrong) {
        if (wrong instanceof JsonMappingException mapping && !mapping.getPath().isEmpty()) {
            var error = new FieldError(JsonPaths.of(mapping), JsonPaths.message(mapping));
            return answers.answer(400, "One field is wrong", List.of(error));
        }
        return answers.answer(400, "The body is not the JSON that was expected", List.of());
    }
}
