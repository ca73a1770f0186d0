package dev.lapwing.care.web;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import dev.lapwing.care.TaskFacet;
import dev.lapwing.care.domain.Standing;
import dev.lapwing.care.domain.TaskKind;
import dev.lapwing.care.domain.TaskOrigin;
import dev.lapwing.care.domain.TaskState;
import dev.lapwing.care.storage.CareTask;
import dev.lapwing.care.storage.TaskStep;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;

/**
 * A task as it is answered, with its life so far.
 *
 * @param question what the rules ask of it while a person has it in hand and they leave it alone, or null
 * @param facets what other areas add, by field name
 */
record TaskAnswer(
        UUID id,
        String unit,
        String depot,
        TaskKind kind,
        TaskOrigin origin,
        LocalDate opens,
        String due,
        LocalDate late,
        TaskState state,
        Standing standing,
        String assignee,
        String why,
        String rule,
        UUID strike,
        UUID event,
        String question,
        List<StepAnswer> steps,
        @JsonAnyGetter Map<String, Object> facets) {

    record StepAnswer(OffsetDateTime at, String who, TaskState state, String words) {}

    static TaskAnswer of(CareTask task, Instant now, List<TaskFacet> facets) {
        ZoneId zone = task.depot.zoneId();
        return new TaskAnswer(
                task.id,
                task.unit.number,
                task.depot.code,
                task.kind,
                task.origin,
                task.opens,
                DueItem.due(task),
                task.late,
                task.state,
                task.state.open() ? task.standingAt(now) : null,
                task.assignee,
                task.why,
                task.ruleId == null ? null : task.ruleId + " v" + task.ruleVersion,
                task.strikeId,
                task.eventId,
                task.state.open() ? task.question : null,
                TaskStep.of(task.id).stream()
                        .map(step -> new StepAnswer(
                                step.at.atZone(zone).toOffsetDateTime(), step.who, step.state, step.words))
                        .toList(),
                facets.stream().collect(Collectors.toMap(TaskFacet::name, facet -> facet.valueOf(task.id))));
    }
}
