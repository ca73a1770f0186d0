package dev.lapwing.jobs.domain.verdict;

import dev.lapwing.jobs.domain.finding.Finding;
import java.util.List;
import java.util.Map;

/** The rules in force in this house: those of the trade, tightened where the operator wants it. Immutable. */
public final class RuleTable {
    private final List<Rule> rules;
    private final RuleSettings settings;

    RuleTable(List<Rule> rules, RuleSettings settings) {
        this.rules = List.copyOf(rules);
        this.settings = settings;
    }

    /** Returns the rules of the trade as the product brings them. */
    public static RuleTable ofTheTrade() {
        return new RuleTable(TradeRules.ALL, RuleSettings.DEFAULTS);
    }

    /**
     * Returns the rules of the trade made stricter by settings such as {@code deep-crack.verdict = rework},
     * {@code void.hold = true}, {@code void.urgency = urgent} or {@code rain-near-hours = 72}.
     *
     * @throws RefusedSettings when a setting is unknown, unreadable or milder than the default; names all of them
     */
    public static RuleTable tightened(Map<String, String> settings) {
        return new Tightening(settings).apply();
    }

    /** Judges the findings of one sheet. No finding at all is a fit roof. */
    public Outcome judge(List<Finding> findings, Situation situation) {
        return new Judgement(rules, settings, situation).of(findings);
    }

    /**
     * Judges a roof that somebody in doubt refers to a workshop, whatever was found until then.
     *
     * @param why what they said
     */
    public Outcome refer(String why, List<Finding> findings, Situation situation) {
        return new Judgement(rules, settings, situation).ofReferred(why, findings);
    }

    /** Returns the figures in force. */
    public RuleSettings settings() {
        return settings;
    }

    /** Returns the rules as lines for a page: id, verdict, work, hold and the sentence. */
    public List<Line> lines() {
        return rules.stream()
                .map(rule -> new Line(
                        rule.id(),
                        rule.consequence().verdict(),
                        rule.consequence().work(),
                        rule.consequence().hold(),
                        rule.consequence().urgency(),
                        rule.consequence().whenPressed(),
                        rule.because()))
                .toList();
    }

    /**
     * One rule as shown to people.
     *
     * @param work null when nothing is to be done
     */
    public record Line(
            String id,
            Verdict verdict,
            Work work,
            boolean hold,
            Urgency urgency,
            Urgency whenPressed,
            String because) {}
}
