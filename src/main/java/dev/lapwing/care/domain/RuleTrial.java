package dev.lapwing.care.domain;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * Tries rules out beside those in force: unit by unit, what a sweep would do with the one and with the other. Nothing is
 * stored; the trial keeps counts only, so a fleet of any size can be streamed through it. Not for several threads at once.
 */
public final class RuleTrial {
    /** What a rule set would do to a unit's work, as {@link DueEngine} says. */
    public record Difference(Plan now, Plan tried) {
        public String unit() {
            return now.unit();
        }
    }

    /**
     * Counts so far.
     *
     * @param units units tried
     * @param different units whose work would differ
     * @param earlier those whose next work would be due earlier
     * @param later those whose next work would be due later
     * @param created tasks the tried rules would make for units whose work would differ
     * @param calledOff tasks they would call off for those
     */
    public record Totals(long units, long different, long earlier, long later, long created, long calledOff) {}

    private final DueEngine now;
    private final DueEngine tried;
    private Totals totals = new Totals(0, 0, 0, 0, 0, 0);

    public RuleTrial(CareRules now, CareRules tried) {
        this.now = new DueEngine(now);
        this.tried = new DueEngine(tried);
    }

    /** Tries one unit and returns how its work would differ, or empty when it would not. */
    public Optional<Difference> unit(UnitFacts facts, LocalDate today) {
        Plan before = now.plan(facts, today);
        Plan after = tried.plan(facts, today);
        boolean differs = !effects(before).equals(effects(after));
        int move = differs ? move(before, after) : 0;
        totals = new Totals(
                totals.units() + 1,
                totals.different() + (differs ? 1 : 0),
                totals.earlier() + (move < 0 ? 1 : 0),
                totals.later() + (move > 0 ? 1 : 0),
                totals.created() + (differs ? count(after, Change.Create.class) : 0),
                totals.calledOff() + (differs ? count(after, Change.CallOff.class) : 0));
        return differs ? Optional.of(new Difference(before, after)) : Optional.empty();
    }

    public Totals totals() {
        return totals;
    }

    private static int move(Plan before, Plan after) {
        if (before.next() == null || after.next() == null) {
            return 0;
        }
        return after.next().window().due().compareTo(before.next().window().due());
    }

    private static long count(Plan plan, Class<? extends Change> type) {
        return plan.changes().stream().filter(type::isInstance).count();
    }

    /** Returns what would be stored, without the reasons: a reason that reads otherwise is no difference. */
    private static List<Object> effects(Plan plan) {
        return plan.changes().stream()
                .filter(change -> change instanceof Change.Create || change instanceof Change.CallOff)
                .map(RuleTrial::effect)
                .toList();
    }

    private static Object effect(Change change) {
        if (change instanceof Change.Create create) {
            return List.of(
                    create.kind(),
                    create.origin(),
                    create.window(),
                    Optional.ofNullable(create.dueAt()),
                    Optional.ofNullable(create.event()));
        }
        return ((Change.CallOff) change).task();
    }
}
