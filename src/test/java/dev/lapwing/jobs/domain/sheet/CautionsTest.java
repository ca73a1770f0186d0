package dev.lapwing.jobs.domain.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import dev.lapwing.jobs.domain.SharedFiles;
import dev.lapwing.jobs.domain.data.BadReferenceData;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CautionsTest {
    private static final String FILE = SharedFiles.read("jobs/cautions.csv");
    private final Cautions cautions = Cautions.read(FILE);

    @ParameterizedTest
    @EnumSource(Footing.class)
    void beginWithFallsAndEndWithDoubt(Footing footing) {
        List<String> ids = ids(footing);

        assertThat(ids).startsWith("falls-kill", "local-rules", "weather").endsWith("doubt");
        assertThat(ids).doesNotHaveDuplicates();
    }

    @Test
    void nameTheFootingOfTheRoofAndNoOther() {
        assertThat(ids(Footing.WALKABLE)).contains("walkable").doesNotContain("no-walk", "unknown-footing");
        assertThat(ids(Footing.NO_WALK)).contains("no-walk").doesNotContain("walkable", "unknown-footing");
        assertThat(ids(Footing.UNKNOWN)).contains("unknown-footing").doesNotContain("walkable", "no-walk");
    }

    @ParameterizedTest
    @CsvSource(
            nullValues = "-",
            value = {"walkable, true", "no-walk, false", "unknown, false", "-, false", "'', false", "mostly, false"})
    void onlyARoofRecordedAsWalkableMayBeSteppedOn(String word, boolean mayStepOn) {
        assertThat(Footing.of(word).mayStepOn()).isEqualTo(mayStepOn);
    }

    @Test
    void speakTheLanguageOfTheReader() {
        Text first = cautions.before(Footing.UNKNOWN).get(0);

        assertThat(first.in("en")).startsWith("Falls kill");
        assertThat(first.in("es")).startsWith("Las caídas matan");
        assertThat(first.in("fr")).startsWith("Les chutes tuent");
        assertThat(first.in("de")).isEqualTo(first.in("en"));
    }

    @Test
    void aFileWithoutTheNoWalkCautionIsRefused() {
        String without = FILE.replaceFirst("(?m)^no-walk,.*\\R", "");

        assertThatThrownBy(() -> Cautions.read(without))
                .isInstanceOf(BadReferenceData.class)
                .hasMessageContaining("NO_WALK");
    }

    @Test
    void washStepsClearBeforeTheySweepAndDryLast() {
        var steps = WashSteps.read(SharedFiles.read("jobs/wash-steps.csv")).steps();

        assertThat(steps).extracting(Text::id).containsExactly("clear", "sweep", "wash", "rinse", "dry");
    }

    @ParameterizedTest
    @CsvSource({"false, false, false", "true, false, true", "false, true, true", "true, true, true"})
    void aWetOrWindyRoofStopsTheWork(boolean wet, boolean windy, boolean stops) {
        assertThat(new Weather(wet, windy).stop().isPresent()).isEqualTo(stops);
    }

    private List<String> ids(Footing footing) {
        return cautions.before(footing).stream().map(Text::id).toList();
    }
}
