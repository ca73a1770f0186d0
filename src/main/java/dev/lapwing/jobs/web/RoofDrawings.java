package dev.lapwing.jobs.web;

import dev.lapwing.jobs.domain.roof.Point;
import dev.lapwing.jobs.domain.roof.RoofDrawing;
import dev.lapwing.jobs.domain.roof.RoofPlan;
import dev.lapwing.jobs.storage.RecordedFinding;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.UUID;

/** Hands pages what was found on a roof, in words and as marks of its plan. */
@Named("roofDrawings")
@ApplicationScoped
public class RoofDrawings {
    /** A finding that a photo can show: its place on the sheet, from 0, and what it is. */
    public record Choice(int position, String words) {}

    /** Returns the findings of a sheet in their order. */
    @Transactional
    public List<Choice> findingsOf(UUID taskId) {
        return RecordedFinding.of(taskId).stream()
                .map(found -> new Choice(found.position, found.finding().inWords()))
                .toList();
    }

    /** Returns a finding as it is marked on a plan. */
    public static RoofDrawing.Found found(RecordedFinding found, RoofPlan plan, ZoneId zone) {
        return new RoofDrawing.Found(
                found.x == null ? plan.placeOf(found.zone) : new Point(found.x, found.y),
                found.recordedAt.atZone(zone).toLocalDate().toString(),
                found.finding().inWords());
    }
}
