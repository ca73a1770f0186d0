package dev.lapwing.jobs.web;

import com.fasterxml.jackson.annotation.JsonInclude;
import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.application.EditingRoofPlans;
import dev.lapwing.jobs.application.PlanEntry;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.storage.PlanVersion;
import dev.lapwing.platform.Refused;
import dev.lapwing.web.Bodies;
import dev.lapwing.web.Page;
import dev.lapwing.web.Roles;
import io.quarkus.security.identity.SecurityIdentity;
import jakarta.annotation.security.RolesAllowed;
import jakarta.inject.Inject;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import java.time.OffsetDateTime;
import java.util.List;
import org.jboss.resteasy.reactive.RestPath;
import org.jboss.resteasy.reactive.RestQuery;

/** The roof plan of a unit and its earlier versions. */
@Path("/api/units/{number}/roof-plan")
class RoofPlanResource {
    /** One version in the list of all. */
    @JsonInclude(JsonInclude.Include.NON_NULL)
    record VersionAnswer(int version, OffsetDateTime savedAt, String savedBy, int objects) {}

    @Inject
    RoofPlans plans;

    @Inject
    EditingRoofPlans editing;

    @Inject
    SecurityIdentity identity;

    @GET
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public RoofPlanAnswer plan(@RestPath String number, @RestQuery Integer version) {
        Unit unit = Unit.require(number);
        RoofPlans.Current plan = version == null
                ? plans.current(unit)
                : plans.version(unit, version)
                        .orElseThrow(() -> Refused.notFound("version " + version + " of this roof plan"));
        return RoofPlanAnswer.of(unit, plan);
    }

    @PUT
    @RolesAllowed(Roles.COORDINATOR)
    @Transactional
    public RoofPlanAnswer save(@RestPath String number, PlanEntry entry) {
        String by = identity.getPrincipal().getName();
        RoofPlans.Current saved = editing.save(number, Bodies.require(entry), by);
        return RoofPlanAnswer.of(Unit.require(number), saved);
    }

    @GET
    @Path("/versions")
    @RolesAllowed({Roles.COORDINATOR, Roles.DESK, Roles.TECH})
    @Transactional
    public Page<VersionAnswer> versions(@RestPath String number) {
        Unit unit = Unit.require(number);
        List<VersionAnswer> all = PlanVersion.all(unit.id).stream()
                .map(version -> new VersionAnswer(
                        version.version,
                        version.savedAt.atZone(unit.depot.zoneId()).toOffsetDateTime(),
                        version.savedBy,
                        version.objects.size()))
                .toList();
        return new Page<>(all, all.size(), null);
    }
}
