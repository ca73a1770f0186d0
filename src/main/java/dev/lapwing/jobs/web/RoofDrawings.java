package dev.lapwing.jobs.web;

import dev.lapwing.care.storage.CareTask;
import dev.lapwing.fleet.Unit;
import dev.lapwing.jobs.application.RoofPlans;
import dev.lapwing.jobs.domain.roof.RoofDrawing;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.RecordedFinding;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Inject;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/** Hands pages the drawn roof plans they show. */
@Named("roofDrawings")
@ApplicationScoped
public class RoofDrawings {
    @Inject
    RoofPlans plans;

    /** Returns the plan of the roof of a task, with the findings of its sheet marked in their order. */
    @Transactional
    public RoofDrawing ofTask(UUID taskId) {
        CareTask task = CareTask.require(taskId);
        RoofPlan plan = plans.of(task.unit);
        ZoneId zone = task.depot.zoneId();
        return RoofDrawing.of(
                plan,
                RecordedFinding.of(taskId).stream()
                        .map(found -> found(found, plan, zone))
                        .toList());
    }

    /** A finding that a photo can show: its place on the sheet, from 0, and what it is. */
    public record Choice(int position, String words) {}

    /** Returns the findings of a sheet in their order. */
    @Transactional
    public List<Choice> findingsOf(UUID taskId) {
        return RecordedFinding.of(taskId).stream()
                .map(found -> new Choice(found.position, found.finding().inWords()))
                .toList();
    }

    /** Returns the plan of a unit's roof with nothing marked. */
    @Transactional
    public RoofDrawing ofUnit(String number) {
        return RoofDrawing.of(plans.of(Unit.require(number)), List.of());
    }

    /** Returns a finding as it is marked on a plan. */
    public static RoofDrawing.Found found(RecordedFinding found, RoofPlan plan, ZoneId zone) {
        return new RoofDrawing.Found(
                plan.placeOf(found.zone),
                found.recordedAt.atZone(zone).toLocalDate().toString(),
                found.finding().inWords());
    }
}
