package dev.lapwing.care.domain;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.care.domain.FleetArbitraries.Case;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** What holds for every unit, whatever its history. */
class EveryUnitTest {
    private static final DueEngine ENGINE = new DueEngine(CareFixture.RULES);

    @Property
    void secondSweepOnTheSameFactsChangesNothing(@ForAll("units") Case unit) {
        unit.fixture().sweep(ENGINE, unit.today());

        Plan second = ENGINE.plan(unit.fixture().facts(), unit.today());

        assertThat(second.changesAnything()).isFalse();
    }

    @Property
    void orderOfTheFactsDoesNotMatter(@ForAll("units") Case unit, @ForAll long shuffle) {
        UnitFacts facts = unit.fixture().facts();
        var random = new Random(shuffle);
        var shuffled = new UnitFacts(
                facts.unit(),
                facts.roof(),
                facts.service(),
                facts.use(),
                facts.zone(),
                facts.season(),
                facts.seasonSince(),
                shuffled(facts.rentals(), random),
                shuffled(facts.done(), random),
                shuffled(facts.open(), random),
                shuffled(facts.events(), random));

        Plan plan = ENGINE.plan(facts, unit.today());
        Plan other = ENGINE.plan(shuffled, unit.today());

        assertThat(other.next()).isEqualTo(plan.next());
        assertThat(other.changes()).containsExactlyInAnyOrderElementsOf(plan.changes());
    }

    /**
     * Both start from work that a sweep has seen: work that does not fit the facts moves only until it is due. For the
     * same reason closing work which an early last return would have let an earlier inspection serve stays open when the
     * sweep comes only once it is due; that is the safe side, and the one difference there may be.
     */
    @Property(tries = 2000)
    void sweepsOnEveryDayAndOneSweepAtTheEndLeaveTheSameWork(
            @ForAll("units") Case daily, @ForAll @IntRange(min = 1, max = 200) int days) {
        daily.fixture().sweep(ENGINE, daily.today());
        CareFixture once = daily.fixture().copy();
        LocalDate end = daily.today().plusDays(days);
        for (LocalDate day = daily.today(); !day.isAfter(end); day = day.plusDays(1)) {
            daily.fixture().sweep(ENGINE, day);
        }

        once.sweep(ENGINE, end);

        boolean closingKept = once.open.stream().anyMatch(task -> closingAlreadyDue(task, end));
        if (closingKept) {
            assertThat(once.open).hasSameSizeAs(daily.fixture().open);
        } else {
            assertThat(work(daily.fixture())).containsExactlyInAnyOrderElementsOf(work(once));
        }
    }

    private static boolean closingAlreadyDue(OpenTask task, LocalDate day) {
        return task.origin() == TaskOrigin.SEASON_CLOSING
                && !task.touched()
                && !task.window().due().isAfter(day);
    }

    @Property(tries = 2000)
    void unitNeverSweptBeforeCatchesUpInOneSweep(
            @ForAll("units") Case daily, @ForAll @IntRange(min = 1, max = 200) int days) {
        daily.fixture().open.clear();
        CareFixture once = daily.fixture().copy();
        LocalDate end = daily.today().plusDays(days);
        for (LocalDate day = daily.today(); !day.isAfter(end); day = day.plusDays(1)) {
            daily.fixture().sweep(ENGINE, day);
        }

        once.sweep(ENGINE, end);

        assertThat(work(daily.fixture())).containsExactlyInAnyOrderElementsOf(work(once));
    }

    @Property
    void unitInServiceAlwaysHasANextDate(@ForAll("units") Case unit) {
        Plan plan = unit.fixture().sweep(ENGINE, unit.today());

        assertThat(plan.withoutSchedule()).isFalse();
        assertThat(plan.nextDue().isPresent()).isEqualTo(plan.inService());
        if (plan.inService()) {
            assertThat(unit.fixture().open)
                    .anyMatch(task -> task.window().equals(plan.next().window()));
        } else {
            assertThat(unit.fixture().open).noneMatch(task -> task.origin().scheduled() && !task.touched());
        }
    }

    @Property
    void noTwoUntouchedRoutineTasksOfOneKindAreOpen(@ForAll("units") Case unit) {
        unit.fixture().sweep(ENGINE, unit.today());

        assertThat(unit.fixture().open.stream()
                        .filter(task -> task.origin().scheduled() && !task.touched())
                        .map(OpenTask::kind))
                .doesNotHaveDuplicates();
    }

    @Property
    void touchedWorkAndEventWorkIsNeverCalledOff(@ForAll("units") Case unit) {
        List<OpenTask> kept = unit.fixture().open.stream()
                .filter(task -> task.touched() || task.origin().event())
                .toList();

        unit.fixture().sweep(ENGINE, unit.today());

        assertThat(unit.fixture().open).containsAll(kept);
    }

    @Property
    void everyStrikeHasAnInspectionOpenOrDone(@ForAll("units") Case unit) {
        unit.fixture().sweep(ENGINE, unit.today());

        for (CareEvent event : unit.fixture().events) {
            Service service = unit.fixture().service;
            boolean gone = service.sold() && service.endedBy(event.day());
            boolean open =
                    unit.fixture().open.stream().anyMatch(task -> event.id().equals(task.event()));
            boolean done = unit.fixture().done.stream()
                    .anyMatch(work -> work.kind().fullInspection() && work.on().isAfter(event.day()));
            assertThat(gone || open || done).as(event.toString()).isTrue();
        }
    }

    @Provide
    Arbitrary<Case> units() {
        return FleetArbitraries.units();
    }

    private static <V> List<V> shuffled(List<V> values, Random random) {
        var copy = new ArrayList<>(values);
        Collections.shuffle(copy, random);
        return copy;
    }

    /** What is to be done and when, without ids. */
    private static List<String> work(CareFixture unit) {
        return unit.open.stream()
                .map(task -> task.kind() + " " + task.origin() + " " + task.window() + " " + task.event())
                .toList();
    }
}
