package dev.lapwing.returns.web;

import dev.lapwing.platform.Identifier;
import dev.lapwing.returns.application.AnsweringQuestions;
import dev.lapwing.returns.application.DeskAnswer;
import dev.lapwing.returns.application.FilingReturnReport;
import dev.lapwing.returns.application.OverrulingReadings;
import dev.lapwing.returns.application.ReturnNotice;
import dev.lapwing.returns.storage.ReturnReport;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Idempotent;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.core.Response;
import java.net.URI;
import org.jboss.resteasy.reactive.RestPath;

@Path("/api/return-reports")
class ReturnReportResource {
    @Inject
    FilingReturnReport filing;

    @Inject
    AnsweringQuestions answering;

    @Inject
    OverrulingReadings overruling;

    @Inject
    ReportAnswers answers;

    @Inject
    SecurityIdentity identity;

    @POST
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Idempotent
    public Response file(ReturnNotice notice) {
        ReturnReport report =
                filing.file(Bodies.require(notice), identity.getPrincipal().getName());
        return Response.created(URI.create("/api/return-reports/" + report.id))
                .entity(answers.of(report))
                .build();
    }

    @GET
    @Path("/{id}")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public ReportAnswer one(@RestPath String id) {
        return answers.of(ReturnReport.require(Identifier.of("return report", id)));
    }

    @POST
    @Path("/{id}/answer")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Transactional
    public ReportAnswer answer(@RestPath String id, DeskAnswer answer) {
        return answers.of(answering.answer(Identifier.of("return report", id), Bodies.require(answer)));
    }

    @POST
    @Path("/{id}/correction")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK})
    @Idempotent
    public Response overrule(@RestPath String id, DeskAnswer answer) {
        ReturnReport report = overruling.overrule(Identifier.of("return report", id), Bodies.require(answer));
        return Response.status(Response.Status.CREATED)
                .entity(answers.of(report))
                .build();
    }
}
