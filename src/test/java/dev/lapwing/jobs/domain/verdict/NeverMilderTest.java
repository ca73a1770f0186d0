package dev.lapwing.jobs.domain.verdict;

import static org.assertj.core.api.Assertions.assertThat;

import dev.lapwing.jobs.domain.finding.Depth;
import dev.lapwing.jobs.domain.finding.Extent;
import dev.lapwing.jobs.domain.finding.Finding;
import dev.lapwing.jobs.domain.finding.FindingEntry;
import dev.lapwing.jobs.domain.finding.FindingKind;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Properties of every set of findings, under the rules of the trade and under tightened ones. */
class NeverMilderTest {
    private static final List<RuleTable> TABLES = List.of(
            RuleTable.ofTheTrade(),
            RuleTable.tightened(Map.of(
                    "deep-crack.verdict", "rework",
                    "loose-in-several-places.verdict", "replace",
                    "void.hold", "true",
                    "surface-crack.verdict", "touch-up",
                    "replace-from-zones", "1",
                    "unknown-rain-is-near", "true")),
            RuleTable.tightened(Map.of("tear.verdict", "stop-and-refer", "chalking.verdict", "rework")));

    @Property(tries = 5_000)
    void addingAFindingNeverMakesAVerdictMilder(
            @ForAll("tables") RuleTable table,
            @ForAll("sheets") List<Finding> findings,
            @ForAll("findings") Finding more,
            @ForAll("situations") Situation situation) {
        var before = table.judge(findings, situation);
        List<Finding> grown = new ArrayList<>(findings);
        grown.add(more);

        var after = table.judge(grown, situation);

        assertThat(after.verdict()).isGreaterThanOrEqualTo(before.verdict());
        assertThat(after.urgency()).isGreaterThanOrEqualTo(before.urgency());
        assertThat(after.hold() || !before.hold()).as("a hold stays").isTrue();
        assertThat(after.sealantWorkWaits() || !before.sealantWorkWaits())
                .as("waiting sealant work goes on waiting")
                .isTrue();
        assertThat(before.followUps()).allSatisfy(work -> assertStillWanted(work, after));
    }

    @Property
    void theOrderOfFindingsDoesNotMatter(
            @ForAll("tables") RuleTable table,
            @ForAll("sheets") List<Finding> findings,
            @ForAll("situations") Situation situation,
            @ForAll Random random) {
        List<Finding> shuffled = new ArrayList<>(findings);
        Collections.shuffle(shuffled, random);

        var one = table.judge(findings, situation);
        var other = table.judge(shuffled, situation);

        assertThat(other.verdict()).isEqualTo(one.verdict());
        assertThat(other.hold()).isEqualTo(one.hold());
        assertThat(other.followUps()).isEqualTo(one.followUps());
    }

    @Property
    void aTightenedTableIsNeverMilderThanTheTrade(
            @ForAll("tables") RuleTable table,
            @ForAll("sheets") List<Finding> findings,
            @ForAll("situations") Situation situation) {
        var trade = RuleTable.ofTheTrade().judge(findings, situation);

        var tightened = table.judge(findings, situation);

        assertThat(tightened.verdict()).isGreaterThanOrEqualTo(trade.verdict());
        assertThat(tightened.urgency()).isGreaterThanOrEqualTo(trade.urgency());
        assertThat(tightened.hold() || !trade.hold()).isTrue();
    }

    @Property
    void everyFindingIsNamedByTheReasons(@ForAll("tables") RuleTable table, @ForAll("sheets") List<Finding> findings) {
        var outcome = table.judge(findings, Findings.NOTHING_PRESSES);

        assertThat(outcome.reasons().stream().flatMap(reason -> reason.findings().stream()))
                .containsAll(findings);
    }

    private static void assertStillWanted(FollowUp before, Outcome after) {
        assertThat(after.followUps()).anySatisfy(now -> {
            boolean covers = now.work() == before.work()
                    || (before.work().isSealantRun()
                            && now.work().isSealantRun()
                            && now.work().compareTo(before.work()) > 0);
            assertThat(covers).isTrue();
            assertThat(now.urgency()).isGreaterThanOrEqualTo(before.urgency());
            assertThat(now.due()).isBeforeOrEqualTo(before.due());
            assertThat(now.waitsFor()).containsAll(before.waitsFor());
            assertThat(now.rules()).containsAll(before.rules());
        });
    }

    @Provide
    Arbitrary<RuleTable> tables() {
        return Arbitraries.of(TABLES);
    }

    @Provide
    Arbitrary<List<Finding>> sheets() {
        return findings().list().ofMaxSize(8);
    }

    @Provide
    Arbitrary<Finding> findings() {
        var zone = Arbitraries.of("front-left", "middle-centre", "rear-right", "rear-left");
        var kind = Arbitraries.of(FindingKind.values()).map(FindingKind::word);
        var depth = Arbitraries.of(Depth.values()).map(Depth::word).injectNull(0.3);
        var extent = Arbitraries.of(Extent.values()).map(Extent::word).injectNull(0.3);
        var length = Arbitraries.doubles().between(0.1, 3_000).injectNull(0.5);
        return Combinators.combine(zone, kind, depth, extent, length)
                .as((z, k, d, e, l) -> new FindingEntry(z, k, d, e, l, "").check())
                .filter(checked -> checked instanceof FindingEntry.Checked.Accepted)
                .map(checked -> ((FindingEntry.Checked.Accepted) checked).finding());
    }

    @Provide
    Arbitrary<Situation> situations() {
        var rain = Arbitraries.doubles().between(0, 100).injectNull(0.3);
        var goesOut = Arbitraries.integers()
                .between(-10, 1_000)
                .map(Duration::ofHours)
                .map(Findings.NOON::plus);
        return Combinators.combine(rain, goesOut.injectNull(0.3), Arbitraries.of(true, false))
                .as((r, g, confirmed) -> new Situation(Findings.NOON, r, g, confirmed));
    }
}
