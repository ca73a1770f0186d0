package dev.lapwing.care.domain;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import dev.lapwing.use.domain.UsePattern;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Reads care rules from JSON; the format is told in {@code docs/care-rules.md}. */
public final class RuleFile {
    /** Place of a problem in a field of the file itself. */
    static final String WHOLE = "file";

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .build();

    private final Set<String> surfaces;
    private final List<RuleProblem> problems = new ArrayList<>();
    private final List<CareRule.Interval> intervals = new ArrayList<>();
    private final List<CareRule.Opening> openings = new ArrayList<>();
    private final List<CareRule.Closing> closings = new ArrayList<>();
    private final List<CareRule.Intake> intakes = new ArrayList<>();
    private final List<CareRule.Event> events = new ArrayList<>();

    private RuleFile(Set<String> surfaces) {
        this.surfaces = surfaces;
    }

    /**
     * Reads and checks rules.
     *
     * @param json text of the file
     * @param surfaces words of all roof surfaces, which conditions may name
     * @throws BadRules naming every problem when the rules cannot be used
     */
    public static CareRules read(String json, Set<String> surfaces) {
        var file = new RuleFile(surfaces);
        CareRules rules = file.rules(tree(json));
        file.refuseIfBad(json);
        file.problems.addAll(RuleCheck.found(rules));
        file.refuseIfBad(json);
        return rules;
    }

    private static JsonNode tree(String json) {
        try {
            return JSON.readTree(json);
        } catch (JsonProcessingException bad) {
            int line = bad.getLocation() == null ? 0 : bad.getLocation().getLineNr();
            String what = "not JSON at line " + line + ": " + bad.getOriginalMessage();
            throw new BadRules(List.of(RuleProblem.ofFile(what).onLine(line)));
        }
    }

    private CareRules rules(JsonNode root) {
        if (!root.isObject() || !root.path("rules").isArray()) {
            throw new BadRules(List.of(RuleProblem.ofFile("the file must be an object with a list 'rules'")));
        }
        var fields = new RuleFields(root, WHOLE, problems);
        int combineDays = fields.days("combineWithin");
        int fullTimeAtLeast = fields.number("fullTimeAtLeast");
        int index = 0;
        for (JsonNode rule : fields.node("rules")) {
            read(rule, "rules[" + index++ + "]");
        }
        fields.close();
        return new CareRules(
                intervals,
                only(openings, "opening"),
                only(closings, "closing"),
                only(intakes, "intake"),
                events,
                combineDays,
                fullTimeAtLeast);
    }

    private void read(JsonNode rule, String place) {
        String id = rule.path("id").asText("");
        var fields = new RuleFields(rule, id.isEmpty() ? place : place + " (" + id + ")", problems);
        var ref = new RuleRef(fields.text("id"), fields.number("version"));
        String source = fields.text("source");
        String type = fields.text("type");
        switch (type) {
            case "interval" -> intervals.add(interval(fields, ref, source));
            case "opening" -> openings.add(opening(fields, ref, source));
            case "closing" -> closings.add(closing(fields, ref, source));
            case "intake" -> intakes.add(intake(fields, ref, source));
            case "event" -> events.add(event(fields, ref, source));
            default -> {
                fields.problem("type", "must be one of interval, opening, closing, intake, event, was '" + type + "'");
                return;
            }
        }
        fields.close();
    }

    private CareRule.Interval interval(RuleFields fields, RuleRef ref, String source) {
        return new CareRule.Interval(
                ref,
                source,
                fields.word("kind", TaskKind.class, TaskKind::word, TaskKind.INSPECTION),
                fields.word("pattern", UsePattern.class, UsePattern::word, UsePattern.FULL_TIME),
                fields.every("every"),
                fields.days("opensBefore"),
                fields.days("lateAfter"),
                conditions(fields));
    }

    private static CareRule.Opening opening(RuleFields fields, RuleRef ref, String source) {
        return new CareRule.Opening(
                ref, source, fields.days("earlyRentalsFrom"), fields.days("opensBefore"), fields.days("lateAfter"));
    }

    private static CareRule.Closing closing(RuleFields fields, RuleRef ref, String source) {
        return new CareRule.Closing(
                ref,
                source,
                fields.days("within"),
                fields.days("lastReturnFrom"),
                fields.days("opensBefore"),
                fields.days("lateAfter"));
    }

    private static CareRule.Intake intake(RuleFields fields, RuleRef ref, String source) {
        return new CareRule.Intake(
                ref, source, fields.days("awayLongerThan"), fields.days("within"), fields.days("lateAfter"));
    }

    private CareRule.Event event(RuleFields fields, RuleRef ref, String source) {
        return new CareRule.Event(
                ref,
                source,
                fields.word("event", TaskOrigin.class, TaskOrigin::word, TaskOrigin.STRIKE),
                fields.word("kind", TaskKind.class, TaskKind::word, TaskKind.INSPECTION),
                fields.within("within"),
                conditions(fields));
    }

    private Conditions conditions(RuleFields fields) {
        if (!fields.has("when")) {
            return Conditions.NONE;
        }
        var when = new RuleFields(fields.node("when"), "when of " + fields.text("id"), problems);
        var named = new HashSet<String>();
        for (JsonNode surface : when.node("surfaces")) {
            named.add(surface.asText());
            if (!surfaces.contains(surface.asText())) {
                when.problem("surfaces", "names '" + surface.asText() + "', which is not a surface");
            }
        }
        int age = when.has("roofOlderThanYears") ? when.number("roofOlderThanYears") : 0;
        var conditions = new Conditions(named, age, when.flag("storedOutside"), when.flag("underTrees"));
        when.close();
        return conditions;
    }

    private <R> R only(List<R> rules, String type) {
        if (rules.size() != 1) {
            problems.add(
                    RuleProblem.ofFile("there must be exactly one rule of type " + type + ", found " + rules.size()));
            return null;
        }
        return rules.get(0);
    }

    private void refuseIfBad(String json) {
        if (!problems.isEmpty()) {
            var lines = RuleLines.of(json);
            throw new BadRules(problems.stream()
                    .map(problem -> problem.onLine(lines.of(problem)))
                    .toList());
        }
    }
}
