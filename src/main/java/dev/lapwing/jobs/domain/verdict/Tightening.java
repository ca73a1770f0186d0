package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.FieldError;
import dev.lapwing.jobs.domain.Words;
import java.time.Duration;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Reads the operator's settings of the rule table and refuses what would loosen it. Used once. */
final class Tightening {
    private static final RuleSettings DEFAULT = RuleSettings.DEFAULTS;

    private final Map<String, String> given;
    private final Map<String, Rule> rules = new LinkedHashMap<>();
    private final List<FieldError> errors = new ArrayList<>();

    Tightening(Map<String, String> given) {
        this.given = new TreeMap<>(given);
        TradeRules.ALL.forEach(rule -> rules.put(rule.id(), rule));
    }

    RuleTable apply() {
        RuleSettings figures = figures();
        // a rule needs its verdict before a hold or an urgency can be judged
        given.keySet().stream().filter(key -> key.endsWith(".verdict")).forEach(this::setting);
        given.keySet().stream().filter(key -> !key.endsWith(".verdict")).forEach(this::setting);
        if (!errors.isEmpty()) {
            throw new RefusedSettings(errors);
        }
        return new RuleTable(List.copyOf(rules.values()), figures);
    }

    /** Takes the figures out of the given settings; what is left concerns single rules. */
    private RuleSettings figures() {
        return new RuleSettings(
                longer("rain-near-hours", DEFAULT.rainNear(), Duration.ofDays(10)),
                longer("goes-out-near-hours", DEFAULT.goesOutNear(), Duration.ofDays(366)),
                yesOrNo("unknown-rain-is-near", given.remove("unknown-rain-is-near"))
                        .orElse(DEFAULT.unknownRainIsNear()),
                number("replace-from-zones", 1, DEFAULT.replaceFromZones(), DEFAULT.replaceFromZones()),
                shorter("routine-within-hours", DEFAULT.routineWithin()),
                shorter("urgent-within-hours", DEFAULT.urgentWithin()));
    }

    private Duration longer(String key, Duration floor, Duration ceiling) {
        int hours = (int) floor.toHours();
        return Duration.ofHours(number(key, hours, (int) ceiling.toHours(), hours));
    }

    private Duration shorter(String key, Duration ceiling) {
        int hours = (int) ceiling.toHours();
        return Duration.ofHours(number(key, 1, hours, hours));
    }

    private int number(String key, int from, int to, int otherwise) {
        String value = given.remove(key);
        if (value == null) {
            return otherwise;
        }
        String digits = value.strip();
        boolean readable = digits.matches("\\d{1,6}");
        if (!readable || Integer.parseInt(digits) < from || Integer.parseInt(digits) > to) {
            refuse(
                    key,
                    "'" + value + "' is not a whole number from " + from + " to " + to
                            + "; the default may be tightened, not loosened");
            return otherwise;
        }
        return Integer.parseInt(digits);
    }

    private void setting(String key) {
        int dot = key.indexOf('.');
        if (dot < 0) {
            refuse(key, "no such setting");
        } else if (!rules.containsKey(key.substring(0, dot))) {
            refuse(key, "no rule of this name; rules are " + String.join(", ", rules.keySet()));
        } else {
            consequence(key, rules.get(key.substring(0, dot)), key.substring(dot + 1), given.get(key));
        }
    }

    private void consequence(String key, Rule rule, String part, String value) {
        Consequence now = rule.consequence();
        Consequence floor = TradeRules.named(rule.id()).consequence();
        Optional<Consequence> next =
                switch (part) {
                    case "verdict" ->
                        atLeast(key, Verdict.class, value, floor.verdict())
                                .map(verdict -> verdict == now.verdict() ? now : now.withVerdict(verdict));
                    case "urgency" ->
                        atLeast(key, Urgency.class, value, floor.urgency())
                                .flatMap(urgency -> urgency(key, now, urgency));
                    case "hold" -> hold(key, now, value);
                    default -> refuse(key, "'" + part + "' cannot be set; verdict, urgency and hold can");
                };
        next.ifPresent(consequence -> rules.put(rule.id(), rule.with(consequence)));
    }

    private Optional<Consequence> urgency(String key, Consequence now, Urgency urgency) {
        return now.work() == null && urgency != Urgency.NONE
                ? refuse(key, "the rule leads to no work that could be urgent; set its verdict first")
                : Optional.of(now.withUrgency(urgency));
    }

    private Optional<Consequence> hold(String key, Consequence now, String value) {
        Optional<Boolean> wanted = yesOrNo(key, value);
        if (wanted.isPresent() && now.hold() && !wanted.get()) {
            return refuse(key, "the rule holds the unit; that cannot be loosened");
        }
        if (wanted.orElse(false) && now.work() == null) {
            return refuse(key, "the rule leads to no work that could end the hold; set its verdict first");
        }
        return wanted.map(hold -> hold ? now.withHold() : now);
    }

    private <E extends Enum<E>> Optional<E> atLeast(String key, Class<E> type, String value, E floor) {
        Optional<E> read = Words.read(type, value);
        if (read.isEmpty()) {
            return refuse(key, "'" + value + "' is not known, expected one of " + Words.list(type));
        }
        return read.get().compareTo(floor) < 0
                ? refuse(key, "'" + value + "' is milder than the default '" + Words.of(floor) + "'")
                : read;
    }

    private Optional<Boolean> yesOrNo(String key, String value) {
        if (value == null) {
            return Optional.empty();
        }
        return switch (value.strip()) {
            case "true" -> Optional.of(true);
            case "false" -> Optional.of(false);
            default -> refuse(key, "'" + value + "' is neither true nor false");
        };
    }

    private <T> Optional<T> refuse(String key, String why) {
        errors.add(new FieldError(key, why));
        return Optional.empty();
    }
}
